using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Dashboard.Planner;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Overview.Starts;

/// <summary>What a planner sees first: the next stop, what is due and not planned, what is late.</summary>
public sealed class PlannerStartQuery(KeptPlan kept, GlanceQuery glance, OrderDesk orders, AfterStopDesk stops)
{
    public async Task<StartView> AskAsync(CancellationToken ct)
    {
        var (view, plant) = (await kept.AskAsync(ct), await glance.AskAsync(ct));
        var (book, begun) = (await orders.AskAsync(ct), await stops.BegunAsync(ct));
        var (time, late) = (plant.Time, book.Count(o => o.IsLate));
        var toOrder = view.ToOrder.Count;
        var tooLate = view.ToOrder.Count(o => o.TooLateAt(view.Picture.Input.Now));
        return new StartView(
            [
                NextStop(view),
                new(
                    $"{plant.DueNotPlanned}",
                    Phrase.Counted(
                        plant.DueNotPlanned, $"chain due in {GlanceView.WeeksAhead} weeks and not planned",
                        $"chains due in {GlanceView.WeeksAhead} weeks and not planned"),
                    plant.DueLink(planned: false))
                {
                    Under = $"{plant.DueAhead - plant.DueNotPlanned} due and planned",
                    Urgent = plant.DueNotPlanned > 0,
                },
                new($"{late}", Phrase.Counted(late, $"order late", $"orders late"), "/plan/orders") { Urgent = late > 0 },
                new($"{toOrder}", Phrase.Counted(toOrder, $"part to order", $"parts to order"), "/plan/orders")
                {
                    Under = tooLate > 0 ? Phrase.Of($"{tooLate} only by express") : Phrase.None,
                    Urgent = tooLate > 0,
                },
                new(
                    $"{begun.Count}",
                    Phrase.Counted(begun.Count, $"swap begun and not reported", $"swaps begun and not reported"), "/plan/done")
                {
                    Urgent = begun.Count > 0,
                },
                new(
                    $"{view.Plan.Remarks.Count}",
                    Phrase.Counted(view.Plan.Remarks.Count, $"conflict in the plan", $"conflicts in the plan"), "/plan")
                {
                    Urgent = view.Plan.Remarks.Any(r => r.IsOfLoad),
                },
            ], time);
    }

    private static StartFact NextStop(KeptPlanView view)
    {
        var time = view.Picture.Time;
        if (view.Plan.Placements.Where(p => p.Window is not null).MinBy(p => p.Window!.Start) is not { Window: { } window })
            return new("–", $"no stop with a swap is planned", "/plan");
        var swaps = view.Plan.Placements.Count(p => p.Window?.Id == window.Id);
        return new(T[time.Away(window.Start)], $"next stop: {window.Line}, {time.Moment(window.Start)}",
            PackageWords.Address(window.Id))
        {
            Under = Phrase.Counted(swaps, $"{swaps} swap", $"{swaps} swaps"),
        };
    }
}
