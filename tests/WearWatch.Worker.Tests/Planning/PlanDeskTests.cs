using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>What programs do with the swap plan: ask for it, let it be proposed, and tell one to be kept.</summary>
public sealed class PlanDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public static TheoryData<SwapEntryJson, string> SwapsThatCannotBe => new()
    {
        { new("D-9"), "chain: 'D-9' is not to be planned: its limit is not near within the horizon, or its shutdown has begun." },
        { new("D-2"), "chain: 'D-2' stands twice." },
        { new("D-1", "Sunday"), "shutdown: No shutdown 'Sunday' of line Debarking is planned within the horizon." },
        { new("D-1", null, "firmly"), "placing: One of proposed, by_hand, locked." },
        { new("D-1", null, null, new string('n', 401)), "note: At most 400 characters." },
    };

    [Fact]
    public async Task A_proposal_can_be_told_as_it_is_and_stands_then_and_told_again_it_changes_nothing()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var proposed = PlanJson.Of(Assert.IsType<PlanAnswer.Planned>(await desk.ProposeAsync(new WhatIf(), null, Ct)).Draft);
        Assert.Empty(await mill.SwapsAsync());
        Assert.InRange(proposed.Cost.Total, proposed.CostAtLeast!.Value, proposed.CostAsItIs);

        var kept = Assert.IsType<PlanAnswer.Planned>(await desk.SaveAsync(ToldAgain(proposed), "planner", Ct));
        Assert.Equal(4, kept.Changed);
        Assert.Equal(
            proposed.Swaps.Select(s => (s.Chain, s.Shutdown)), PlanJson.Of(kept.Draft).Swaps.Select(s => (s.Chain, s.Shutdown)));
        Assert.All(await mill.SwapsAsync(), s => Assert.Equal(("planner", SwapPlacing.Proposed), (s.DecidedBy, s.Placing)));

        var again = Assert.IsType<PlanAnswer.Planned>(await desk.SaveAsync(ToldAgain(proposed), "planner", Ct));
        Assert.Equal((0, 4), (again.Changed, (await mill.SwapsAsync()).Count));
    }

    [Fact]
    public async Task A_plan_that_starts_from_what_has_changed_since_is_not_kept()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        await desk.SaveAsync(Told(shown, new SwapEntryJson("D-1", FirstOf(shown, "Debarking"), "locked")), "Ann", Ct);
        var late = await desk.SaveAsync(Told(shown, new SwapEntryJson("D-1")), "Bob", Ct);
        Assert.Equal(shown.Revision + 1, Assert.IsType<PlanAnswer.Overtaken>(late).Revision);
        Assert.Equal("Ann", Assert.Single(await mill.SwapsAsync()).DecidedBy);
    }

    [Fact]
    public async Task A_board_that_was_begun_before_somebody_else_decided_is_not_kept()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var (first, second) = (await mill.DraftAsync(), await mill.DraftAsync());
        first.Hold("D-1", SwapPlacing.Locked);
        second.Annotate("D-2", "asked for");
        var (kept, late) = (await mill.Get<PlanKeeping>().KeepAsync(first, "Ann", Ct),
            await mill.Get<PlanKeeping>().KeepAsync(second, "Bob", Ct));
        Assert.Equal(1, Assert.IsType<PlanAnswer.Planned>(kept).Changed);
        Assert.IsType<PlanAnswer.Overtaken>(late);
        Assert.Equal("Ann", Assert.Single(await mill.SwapsAsync()).DecidedBy);
    }

    [Fact]
    public async Task Swaps_that_are_not_named_stay_and_a_locked_one_moves_only_when_it_is_let_go()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var (first, last) = (FirstOf(shown, "Debarking"), shown.Shutdowns.Last(s => s.Line == "Debarking").Id);
        await desk.SaveAsync(Told(shown, new("D-1", first, "locked", "sprockets"), new("D-2", first)), "Ann", Ct);

        shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var refused = await desk.SaveAsync(Told(shown, new SwapEntryJson("D-1", last, "locked")), "Bob", Ct);
        Assert.Equal("swaps[0].shutdown", Assert.Single(Assert.IsType<PlanAnswer.Refused>(refused).Refusals).Field);
        Assert.IsType<PlanAnswer.Planned>(await desk.SaveAsync(Told(shown, new SwapEntryJson("D-1", last)), "Bob", Ct));

        shown = PlanJson.Of(await desk.ShowAsync(Ct));
        Assert.Equal(
            [("D-1", last, "by_hand", "sprockets"), ("D-2", first, "by_hand", "")],
            shown.Swaps.Take(2).Select(s => (s.Chain, s.Shutdown, s.Placing, s.Note)));
    }

    [Theory]
    [MemberData(nameof(SwapsThatCannotBe), DisableDiscoveryEnumeration = true)]
    public async Task A_swap_that_cannot_be_is_refused_by_field_and_nothing_of_the_plan_is_kept(SwapEntryJson swap, string reason)
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var answer = await desk.SaveAsync(Told(shown, new("D-2", FirstOf(shown, "Debarking")), swap), "planner", Ct);
        var refusal = Assert.Single(Assert.IsType<PlanAnswer.Refused>(answer).Refusals);
        Assert.Equal("swaps[1]." + reason, $"{refusal.Field}: {refusal.Reason}");
        Assert.Empty(await mill.SwapsAsync());
    }

    [Fact]
    public async Task A_swap_stands_in_a_shutdown_of_its_own_line_and_a_plan_says_from_where_it_starts()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var answer = await desk.SaveAsync(new(null, [new("P-1", FirstOf(shown, "Debarking"))]), "planner", Ct);
        Assert.Equal(
            ["revision", "swaps[0].shutdown"], Assert.IsType<PlanAnswer.Refused>(answer).Refusals.Select(r => r.Field));
    }

    [Fact]
    public async Task Parallel_strands_are_told_together_or_refused()
    {
        await using var mill = await PlannedMill.OpenAsync();
        foreach (var chain in new[] { "P-1", "P-2" })
            await mill.Get<PlanInputs>().SaveAsync(new SwapTermsLine(chain, "", "press drive", null, null, false), Ct);
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var press = FirstOf(shown, "Press");
        var refused = await desk.SaveAsync(Told(shown, new SwapEntryJson("P-2", press)), "planner", Ct);
        Assert.StartsWith(
            "P-1, P-2 are swapped together", Assert.Single(Assert.IsType<PlanAnswer.Refused>(refused).Refusals).Reason.ToString(),
            StringComparison.Ordinal);
        var both = Told(shown, new("P-1", press), new("P-2", press));
        Assert.IsType<PlanAnswer.Planned>(await desk.SaveAsync(both, "planner", Ct));
    }

    [Fact]
    public async Task A_plan_can_be_proposed_under_other_circumstances_to_look_at()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var asked = new WhatIfJson(Weeks: 8, CrewPercent: 50, Shutdown: FirstOf(shown, "Press"), ShutdownDays: 2);
        var supposed = PlanJson.Of(Assert.IsType<PlanAnswer.Planned>(await desk.ProposeAsync(asked.ToWhatIf(), null, Ct)).Draft);
        Assert.Equal(asked with { DeliveriesLateDays = 0 }, supposed.WhatIf);
        Assert.Equal(mill.Now.AddDays(56), supposed.HorizonEnd);
        Assert.All(supposed.Shutdowns, s => Assert.Equal(8, s.CrewHours)); // half of 16 h
        var moved = supposed.Shutdowns.Single(s => s.Id == asked.Shutdown);
        Assert.Equal(shown.Shutdowns.Single(s => s.Id == asked.Shutdown).Start.AddDays(2), moved.Start);
        Assert.IsType<PlanAnswer.Refused>(await desk.SaveAsync(ToldAgain(supposed), "planner", Ct));
    }

    [Theory]
    [InlineData("weeks", 0, 100, 0, 0)]
    [InlineData("crew_percent", 26, 501, 0, 0)]
    [InlineData("deliveries_late_days", 26, 100, -1, 0)]
    [InlineData("shutdown_days", 26, 100, 0, 366)]
    public async Task Circumstances_that_cannot_be_are_refused_by_field(string field, int weeks, int crew, int late, int days)
    {
        await using var mill = await PlannedMill.OpenAsync();
        var answer = await mill.Get<PlanDesk>().ProposeAsync(new WhatIf(crew, late, "Press", days, weeks), null, Ct);
        Assert.Equal(field, Assert.Single(Assert.IsType<PlanAnswer.Refused>(answer).Refusals).Field);
    }

    [Fact]
    public async Task A_swap_after_a_shorter_horizon_stays_kept_and_is_not_called_homeless()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        var last = shown.Shutdowns.Last(s => s.Line == "Press").Id;
        await desk.SaveAsync(Told(shown, new SwapEntryJson("P-1", last)), "planner", Ct);
        var near = Assert.IsType<PlanAnswer.Planned>(await desk.ProposeAsync(new WhatIf(Weeks: 4), null, Ct)).Draft;
        Assert.Empty(near.Homeless);
        Assert.DoesNotContain("P-1", near.Picture.Faces.Keys);
        Assert.Equal(last, PlanJson.Of(await desk.ShowAsync(Ct)).Swaps.Single(s => s.Chain == "P-1").Shutdown);
    }

    [Fact]
    public async Task A_swap_that_is_taken_out_of_its_shutdown_does_not_wait_for_a_word_when_that_begins()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<PlanDesk>();
        var shown = PlanJson.Of(await desk.ShowAsync(Ct));
        await desk.SaveAsync(Told(shown, new SwapEntryJson("D-1", FirstOf(shown, "Debarking"))), "planner", Ct);
        await desk.SaveAsync(Told(PlanJson.Of(await desk.ShowAsync(Ct)), new SwapEntryJson("D-1")), "planner", Ct);
        mill.Pass(TimeSpan.FromDays(10));
        Assert.Empty(await mill.Get<AfterStopDesk>().BegunAsync(Ct));
        Assert.Contains("D-1", (await mill.DraftAsync()).Picture.Faces.Keys);
    }

    private static PlanEntryJson Told(PlanJson shown, params SwapEntryJson[] swaps) => new(shown.Revision, swaps);

    private static PlanEntryJson ToldAgain(PlanJson plan) => new(
        plan.Revision, [.. plan.Swaps.Select(s => new SwapEntryJson(s.Chain, s.Shutdown, s.Placing, s.Note))], plan.WhatIf);

    private static string FirstOf(PlanJson plan, string line) => plan.Shutdowns.First(s => s.Line == line).Id;
}
