using WearWatch.Chains;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>Gathers the work package of a stop, or the stops that have one.</summary>
public sealed class WorkPackageQuery(KeptPlan kept, JobCardQuery jobCards)
{
    /// <summary>
    /// The package of a stop with its job cards; without an id, or for one that is gone, the stops to choose from.
    /// </summary>
    public async Task<WorkPackageView> AskAsync(string windowId, CancellationToken ct)
    {
        var view = await kept.AskAsync(ct);
        var package = WorkPackage.Of(view, windowId);
        List<JobCard> cards = [];
        foreach (var step in package?.Steps ?? []) cards.Add((await jobCards.OfAsync(view, step.Job.Face.Row.Name, ct))!);
        return new WorkPackageView
        {
            Time = view.Picture.Time,
            Package = package,
            Cards = cards,
            Cautions = [.. package?.Steps.SelectMany(s => Caution.For(s.Job.Face.Row.ToCard())).Distinct()
                .Select(caution => T[caution]) ?? []],
            Stops = [.. view.Plan.Placements.Where(p => p.Window is not null).GroupBy(p => p.Window!.Id)
                .Select(g => (g.First().Window!, g.Count())).OrderBy(s => s.Item1.Start)],
        };
    }
}
