using WearWatch.Storage.Rows;

namespace WearWatch.Plant.WorkOrders;

/// <summary>
/// Whether a report on a work order contradicts what is known here. What does is never decided silently: a person settles it.
/// </summary>
public static class WorkOrderConflict
{
    /// <summary>A stop that began early is no slip.</summary>
    public static readonly TimeSpan BeforeTheStop = TimeSpan.FromDays(1);

    /// <summary>Hours are told to some minutes.</summary>
    private const double SameHours = 0.05;

    /// <summary>What a report contradicts; nothing for one that can be used as it is.</summary>
    /// <param name="told">The report.</param>
    /// <param name="known">What is known here.</param>
    public static Phrase Of(WorkOrderReportRow told, ReportedSwap known)
    {
        if (known.Swap is not { } swap) return $"No planned swap has the id {told.Swap}.";
        if (OfNumber(told, known.Order) is { IsEmpty: false } number) return number;
        if (OfState(told, known.Order) is { IsEmpty: false } state) return state;
        return swap.Outcome switch
        {
            SwapEnd.Replaced => OfMoved(told, known),
            SwapEnd.Done => OfDone(told, swap, known),
            SwapEnd.NotDone => OfNotDone(told, swap),
            _ => OfPlanned(told, swap, known),
        };
    }

    private static Phrase OfNumber(WorkOrderReportRow told, WorkOrder? order) =>
        order is { Number.Length: > 0 } && told.Number.Length > 0 && told.Number != order.Number
            ? $"The work order of this swap has the number {order.Number}; now it is {told.Number}."
            : Phrase.None;

    private static Phrase OfState(WorkOrderReportRow told, WorkOrder? order) =>
        order is not null && (told.State < order.State
            || (order.State, told.State) is (WorkOrderState.Done, WorkOrderState.Cancelled))
            ? $"The work order goes back from {WorkOrderWords.Of(order.State)} to {WorkOrderWords.Of(told.State)}."
            : Phrase.None;

    /// <summary>That the order of a swap which was called off is cancelled too is as it should be.</summary>
    private static Phrase OfMoved(WorkOrderReportRow told, ReportedSwap known) => told.State == WorkOrderState.Cancelled
        ? Phrase.None
        : known.Standing is { Start: { } start } standing && standing.Id != known.Swap!.Id
            ? Phrase.Of(
                $"The swap was moved: it is {SwapId.Of(standing.Id)} now, in the shutdown of {known.Time.DateOf(start)}.")
            : $"The swap was taken out of the plan.";

    private static Phrase OfDone(WorkOrderReportRow told, SwapRow swap, ReportedSwap known)
    {
        if (told.State == WorkOrderState.Cancelled)
            return $"The work order is cancelled, but the swap was reported here as done.";
        if (told.State != WorkOrderState.Done || known.DoneAt is not { } done) return Phrase.None;
        var (ours, theirDay) = (known.Time.DateOf(done), known.Time.DateOf(told.DoneAt!.Value));
        if (ours != theirDay) return $"It was reported here as done on {ours}; now it is {theirDay}.";
        return swap.HoursWorked is { } hours && told.HoursWorked is { } theirs && Math.Abs(hours - theirs) > SameHours
            ? $"It was reported here with {hours:0.##} hours of work; now it is {theirs:0.##}."
            : Phrase.None;
    }

    private static Phrase OfNotDone(WorkOrderReportRow told, SwapRow swap) => told.State == WorkOrderState.Done
        ? $"It was reported here as not done: {swap.OutcomeNote}"
        : Phrase.None;

    private static Phrase OfPlanned(WorkOrderReportRow told, SwapRow swap, ReportedSwap known)
    {
        if (told.State != WorkOrderState.Done) return Phrase.None;
        if (known.Order is { State: WorkOrderState.Done }) return $"The swap was done once; a person has taken that back here.";
        if (swap.Start is not { } start) return $"The swap was taken out of the plan.";
        if (told.DoneAt < start - BeforeTheStop)
        {
            return $"It was done on {known.Time.DateOf(told.DoneAt!.Value)}, before its shutdown, which begins on "
                + $"{known.Time.DateOf(start)}.";
        }

        return known.ReplacedAt is { } replaced
            ? $"A replacement of this chain was recorded on {known.Time.DateOf(replaced)} already."
            : Phrase.None;
    }
}
