using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.WorkOrders;

/// <summary>What a report may say without a person, asked for every state before and every outcome.</summary>
public sealed class WorkOrderConflictTests
{
    private static readonly DateTimeOffset now = TestPlant.Start;

    /// <summary>From each state (row) to each other (column), in their order: y may be, n goes back or contradicts.</summary>
    private static readonly string[] mayFollow =
    [
        "yyyyy", // open
        "nyyyy", // released
        "nnyyy", // in work
        "nnnyn", // done
        "nnnny", // cancelled
    ];

    [Fact]
    public void A_work_order_goes_forwards_and_never_back()
    {
        foreach (var before in Enum.GetValues<WorkOrderState>())
        {
            foreach (var after in Enum.GetValues<WorkOrderState>())
            {
                var isTakenBack = (before, after) == (WorkOrderState.Done, WorkOrderState.Done);
                var known = Known(Swap(SwapEnd.Planned)) with { Order = new WorkOrder("7", before, now) };
                var conflict = WorkOrderConflict.Of(Report(after), known);
                var may = mayFollow[(int)before][(int)after] == 'y' && !isTakenBack;
                Assert.True(conflict.IsEmpty == may, $"{before} {after}: {conflict}");
            }
        }
    }

    [Fact]
    public void Each_outcome_stands_against_the_states_that_contradict_it()
    {
        // Outcome (row) and state (column): y may be told, n is a conflict.
        Dictionary<SwapEnd, string> may = new()
        {
            [SwapEnd.Planned] = "yyyyy",
            [SwapEnd.Replaced] = "nnnny",
            [SwapEnd.Done] = "yyyyn",
            [SwapEnd.NotDone] = "yyyny",
        };
        foreach (var outcome in Enum.GetValues<SwapEnd>())
        {
            foreach (var state in Enum.GetValues<WorkOrderState>())
            {
                var conflict = WorkOrderConflict.Of(Report(state), Known(Swap(outcome)));
                Assert.True(conflict.IsEmpty == (may[outcome][(int)state] == 'y'), $"{outcome} {state}: {conflict}");
            }
        }
    }

    [Theory]
    [InlineData(0, 3.0, true)]
    [InlineData(0, 3.04, true)]
    [InlineData(0, 3.5, false)]
    [InlineData(0, null, true)]
    [InlineData(1, 3.0, false)]
    public void A_swap_that_is_reported_as_done_is_done_on_that_day_and_with_those_hours(
        int daysLater, double? hours, bool agrees)
    {
        var swap = Swap(SwapEnd.Done);
        swap.HoursWorked = 3;
        var told = Report(WorkOrderState.Done, now.AddDays(daysLater).AddHours(1), hours: hours);
        Assert.Equal(agrees, WorkOrderConflict.Of(told, Known(swap)).IsEmpty);
    }

    [Fact]
    public void Another_number_an_unknown_id_a_date_before_the_stop_and_a_replacement_beside_the_plan_are_asked_about()
    {
        var planned = Known(Swap(SwapEnd.Planned));
        Says("no planned swap has the id", Report(WorkOrderState.Open), planned with { Swap = null });
        Says("has the number 7; now it is 8", Report(WorkOrderState.Released, number: "8"),
            planned with { Order = new WorkOrder("7", WorkOrderState.Open, now) });
        Says("before its shutdown", Report(WorkOrderState.Done, now.AddDays(-2)), planned);
        Assert.True(WorkOrderConflict.Of(Report(WorkOrderState.Done, now.AddHours(-20)), planned).IsEmpty);
        Says("was recorded on", Report(WorkOrderState.Done), planned with { ReplacedAt = now.AddDays(-1) });
        Says("taken out of the plan", Report(WorkOrderState.Done), Known(new SwapRow { Id = 1, Outcome = SwapEnd.Planned }));
        var moved = new SwapRow { Id = 2, Start = now.AddDays(14) };
        Says("it is swap-2 now", Report(WorkOrderState.Released), Known(Swap(SwapEnd.Replaced)) with { Standing = moved });
    }

    private static void Says(string words, WorkOrderReportRow told, ReportedSwap known) =>
        Assert.Contains(words, WorkOrderConflict.Of(told, known).ToString(), StringComparison.OrdinalIgnoreCase);

    private static SwapRow Swap(SwapEnd outcome) => new() { Id = 1, WindowId = "w", Start = now, Outcome = outcome };

    private static ReportedSwap Known(SwapRow swap) => new()
    {
        Swap = swap,
        Standing = swap,
        Order = null,
        DoneAt = swap.Outcome == SwapEnd.Done ? now : null,
        ReplacedAt = null,
        Time = new PlantTime(now.AddDays(1), TimeZoneInfo.Utc),
    };

    private static WorkOrderReportRow Report(
        WorkOrderState state, DateTimeOffset? doneAt = null, string number = "7", double? hours = null) => new()
        {
            Key = "k",
            Fingerprint = "f",
            Swap = "swap-1",
            Number = number,
            State = state,
            DoneAt = state == WorkOrderState.Done ? doneAt ?? now : null,
            HoursWorked = hours,
        };
}
