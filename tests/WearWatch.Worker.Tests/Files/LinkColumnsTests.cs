using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Register;

namespace WearWatch.Worker.Tests.Files;

/// <summary>A hoist maker's published row: 5x15, L1 15.7, L11 170.6, dm 4.5 mm (docs/references.md [74]).</summary>
public sealed class LinkColumnsTests
{
    private const string Head = "chain,pitch_mm,family,lifts,link_use,link_diameter_mm,link_one_limit_mm,link_several_limit_mm,"
        + "link_diameter_limit_mm,link_table_source\n";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_file_brings_the_makers_table()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync([A.File("chains.csv", Head
            + "HOIST,15,round_link,yes,powered_hoist,5,15.7,170.6,4.5,manual p. 12\n")], null, Ct);
        await using var db = plant.Db();
        var links = (await db.Chains.SingleAsync(Ct)).ToCard().Links!;
        Assert.Equal((15.7, 170.6, 4.5), (links.OneLinkLimitMm, links.SeveralLinksLimitMm, links.DiameterLimitMm));
    }

    // 21.2 mm for a chain of 5 mm was met in print.
    [Fact]
    public async Task A_misprint_in_a_file_is_refused_with_its_line_and_reason()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync([A.File("chains.csv", Head
            + "HOIST,15,round_link,yes,powered_hoist,5,15.7,170.6,21.2,manual p. 12\n")], null, Ct);
        await using var db = plant.Db();
        Assert.False(await db.Chains.AnyAsync(Ct));
    }

    [Fact]
    public async Task A_misprint_on_a_card_is_refused_by_its_field()
    {
        await using var plant = await TestPlant.OpenAsync();
        var card = new ChainCard
        {
            Name = "HOIST",
            PitchMm = 15,
            Family = ChainFamily.Find("round_link")!,
            LinkEntry = new() { DiameterMm = 5, DiameterLimitMm = 21.2, Source = "manual p. 12" },
        };
        var refused = Assert.IsType<RegisterAnswer.Refused>(
            await plant.Get<RegisterDesk>().AddAsync(card, "P. Planner", "", ct: Ct));
        Assert.Equal("link_diameter_limit_mm", Assert.Single(refused.Refusals).Field);
        Assert.IsType<RegisterAnswer.Refused>(await plant.Get<RegisterDesk>().AddAsync(
            card with { Family = ChainFamily.Usual, LinkEntry = new() { DiameterMm = 5 } }, "P. Planner", "", ct: Ct));
    }
}
