using WearWatch.Lifting.Examinations;
using WearWatch.Planning.Plans;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>What the plan takes from the register of lifting chains, and what it says of chains that it cannot plan.</summary>
public sealed class LiftingRegisterPlanTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_chains_of_a_set_are_swapped_together_by_the_date_of_the_first_however_little_the_others_have_worn()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        await using (var db = mill.Db())
        {
            foreach (var chain in db.Chains.Where(c => c.Line == "Debarking").ToArray())
                db.LiftingCards.Add(new LiftingCardRow { ChainId = chain.Id, Key = chain.Name, By = "Ann", ChainSet = "mast 7" });
            await db.SaveChangesAsync(Ct);
        }

        await HoistMill.ForecastAsync(mill, "D-2", medianH: 900_000, outOfUseBy: null);
        var draft = await mill.ProposedAsync();
        Assert.Equal(["D-1", "D-2"], draft.Board.Together("D-1"));
        Assert.InRange(HoistMill.PlaceIn(draft, "D-1"), 0, 1);
        Assert.Equal(HoistMill.PlaceIn(draft, "D-1"), HoistMill.PlaceIn(draft, "D-2"));
        Assert.Contains("holds a load", draft.Move("D-2", HoistMill.WindowOf(draft, 2))?.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_chain_that_is_taken_out_of_use_may_be_renewed_in_any_shutdown_and_the_plan_says_first_that_it_is_out()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 4);
        await using (var db = mill.Db())
        {
            var id = db.Chains.Single(c => c.Name == "D-1").Id;
            db.LiftingStates.Add(new LiftingStateRow { ChainId = id, Standing = LiftingStanding.Quarantined });
            await db.SaveChangesAsync(Ct);
        }

        var draft = await mill.DraftAsync();
        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 2)));
        Assert.Equal((PlanRemarkKind.OutOfUse, "D-1"), (draft.Plan.Remarks[0].Kind, draft.Plan.Remarks[0].Subject));
    }

    [Theory]
    [InlineData(LiftingFaultKind.StopFinding)]
    [InlineData(LiftingFaultKind.ReportOutOfUse)]
    public async Task A_chain_that_a_finding_or_a_report_stops_is_out_of_use_now_whatever_its_wear(LiftingFaultKind kind)
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 40);
        await using (var db = mill.Db())
        {
            var id = db.Chains.Single(c => c.Name == "D-1").Id;
            db.LiftingStates.Add(new LiftingStateRow { ChainId = id, Faults = [new LiftingFault(kind, $"Cracked plate.")] });
            await db.SaveChangesAsync(Ct);
        }

        var draft = await mill.ProposedAsync();
        Assert.Equal(mill.Now, draft.Plan.Placements.Single(p => p.Chain == "D-1").OutOfUseFrom);
        Assert.Contains("holds a load", draft.Move("D-1", HoistMill.WindowOf(draft, 0))?.ToString(), StringComparison.Ordinal);
        Assert.Contains(draft.Plan.Remarks.TakeWhile(r => r.Kind == PlanRemarkKind.OutOfUse),
            r => r.Why.ToString().Contains("until a competent person releases it", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_chain_that_holds_a_load_and_cannot_be_judged_is_named_first_though_no_swap_of_it_is_planned()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        await using (var db = mill.Db())
        {
            db.Chains.Add(new ChainRow { Name = "H-9", Line = "Debarking", PitchMm = 25.4, Lifts = true });
            await db.SaveChangesAsync(Ct);
        }

        var first = (await mill.DraftAsync()).Plan.Remarks.First(r => r.Kind != PlanRemarkKind.OutOfUse);
        Assert.Equal((PlanRemarkKind.CannotBeJudged, "H-9"), (first.Kind, first.Subject));
    }

    [Fact]
    public async Task A_swap_whose_shutdown_has_begun_without_a_word_is_named_first_with_the_date()
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 20);
        var draft = await mill.DraftAsync();
        Assert.Null(draft.Move("D-1", HoistMill.WindowOf(draft, 1)));
        await mill.KeepAsync(draft);
        mill.Pass(TimeSpan.FromDays(25));
        var first = (await mill.DraftAsync()).Plan.Remarks[0];
        Assert.Equal((PlanRemarkKind.OutOfUse, "D-1"), (first.Kind, first.Subject));
        Assert.Contains("nobody has said what became of it", first.Why.ToString(), StringComparison.Ordinal);
    }
}
