using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>A replacement of a chain that is hardly worn: it may be that of another, and moves nothing before a yes.</summary>
public sealed class ReplacementInDoubtTests
{
    private static readonly DateTimeOffset Begin = new(2026, 1, 5, 8, 0, 0, TimeSpan.Zero);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_replacement_of_a_hardly_worn_chain_is_asked_about_and_the_worn_neighbour_is_named()
    {
        await using var plant = await WithTwoChainsAsync();
        var before = await EarlyAsync(plant);
        var told = Replaced("C1");

        var refused = Assert.IsType<IntakeAnswer.Refused>(await plant.Desk.TakeEventAsync(told, Ct));
        var refusal = Assert.Single(refused.Refusals);
        Assert.Equal(Refusal.ToBeConfirmed, refusal.Field);
        Assert.Contains("C1 is hardly worn", refusal.Reason.ToString(), StringComparison.Ordinal);
        Assert.Contains("Was it C2?", refusal.Reason.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, await EarlyAsync(plant));

        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(told with { Confirmed = true }, Ct));
        Assert.NotEqual(before, await EarlyAsync(plant));
    }

    [Fact]
    public async Task A_chain_that_is_worn_broke_or_was_never_measured_is_replaced_without_a_question()
    {
        await using var plant = await WithTwoChainsAsync();
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(Replaced("C2"), Ct));
        Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.TakeEventAsync(Replaced("C1").Telling(e => e with { Broke = true }), Ct));
        await plant.AddChainAsync("C3");
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(Replaced("C3"), Ct));
    }

    [Fact]
    public async Task A_chain_that_was_just_replaced_is_not_replaced_again_without_a_question()
    {
        await using var plant = await WithTwoChainsAsync();
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(Replaced("C2"), Ct));
        Assert.IsType<IntakeAnswer.Refused>(
            await plant.Desk.TakeEventAsync(Replaced("C2").Telling(e => e with { At = Begin.AddDays(134) }), Ct));
    }

    private static NewEvent Replaced(string chain) =>
        A.Event(chain, ChainEventKind.Replacement, at: Begin.AddDays(125));

    /// <summary>Two chains of a line with limits of 3 %: C1 is worn by 0.4 %, C2 by 2.6 %.</summary>
    private static async Task<TestPlant> WithTwoChainsAsync()
    {
        var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(
            [A.File("chains.csv", "chain,line,pitch_mm,limit_pct\nC1,L1,25.4,3\nC2,L1,25.4,3\n")], null, Ct);
        for (var visit = 0; visit < 5; visit++)
        {
            foreach (var (chain, percent) in ((string, double)[])[("C1", 0.1), ("C2", 0.65)])
            {
                var reading = A.Reading(chain, 1000 + 600 * visit, percent * visit, takenAt: Begin.AddDays(30 * visit),
                    confirmed: true);
                Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(reading, Ct));
            }
        }

        return plant;
    }

    /// <summary>Hours to the early date of C1.</summary>
    private static async Task<double> EarlyAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return (await db.Forecasts.SingleAsync(f => f.IsLatest && f.ChainId == 1, Ct)).PercentilesH[4];
    }
}
