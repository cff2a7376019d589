using WearWatch.Chains.Families;
using WearWatch.Dashboard.Engineer.Workbench.ChainTypes;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class PlantTypesTests
{
    [Fact]
    public async Task Types_that_the_catalogue_does_not_have_are_listed_with_the_plant_as_their_source()
    {
        await using var host = new DashboardHost();
        await using (var db = await host.OpenAsync())
        {
            db.Chains.AddRange(
                Chain("A-1", "16B-1", ChainFamily.Usual, 25.4),
                Chain("A-2", "IT 3/8", ChainFamily.Named("inverted_tooth"), 9.525),
                Chain("A-3", "IT 3/8", ChainFamily.Named("inverted_tooth"), 9.525),
                Chain("A-4", "", ChainFamily.Named("custom"), 31), Chain("A-5", "18x64", ChainFamily.Named("round_link"), 64));
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        var own = await host.Get<PlantTypes>().AskAsync(TestContext.Current.CancellationToken);
        Assert.Equal([("IT 3/8", ChainFamily.Named("inverted_tooth"), 2),
            ("without a designation", ChainFamily.Named("custom"), 1)],
                own.Select(t => (t.Type.Designation, t.Type.Family, t.Chains)));
        Assert.All(own, t => Assert.Equal("stated by the plant", t.Type.PitchMm!.Value.Source));
    }

    private static ChainRow Chain(string name, string type, ChainFamily family, double pitchMm) =>
        new() { Name = name, Line = "A", ChainType = type, Family = family, PitchMm = pitchMm };
}
