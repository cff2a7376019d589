using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;

namespace WearWatch.Plant.Planning;

/// <summary>A swap in the course of a stop.</summary>
/// <param name="Turn">When it is done, and by whom.</param>
/// <param name="Job">The swap.</param>
public sealed record PackageStep(StopTurn Turn, SwapJob Job);

/// <summary>A part that a stop takes from the store.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">How much of it.</param>
/// <param name="There">How much will be there by then, as the store and the orders say; null without a record.</param>
public sealed record PickLine(Part Part, int Quantity, int? There)
{
    /// <summary>The numbers under which it is kept: of a chain the store's, of sprockets those of their record.</summary>
    public IReadOnlyList<string> Numbers { get; init; } = [];

    /// <summary>How much is missing by then; null without a record.</summary>
    public int? Missing => There is { } there ? Math.Max(0, Quantity - there) : null;
}

/// <summary>Everything that the people of one stop need, before it begins.</summary>
public sealed record WorkPackage
{
    /// <summary>The stop.</summary>
    public required ShutdownWindow Window { get; init; }

    /// <summary>How many fitters there are.</summary>
    public required int Fitters { get; init; }

    /// <summary>The swaps in their order.</summary>
    public required IReadOnlyList<PackageStep> Steps { get; init; }

    /// <summary>What to pick from the store, chain first.</summary>
    public required IReadOnlyList<PickLine> Picks { get; init; }

    /// <summary>What to cut beforehand, by type and the longest first; chains that hold a load come whole.</summary>
    public IEnumerable<SwapJob> Cuts => Steps.Select(s => s.Job).Where(j => !j.Face.Row.HoldsLoad)
        .OrderBy(j => j.Task.ChainType, StringComparer.Ordinal).ThenByDescending(j => j.Cut.CutPitches);

    /// <summary>The hours of work of each fitter, from the first.</summary>
    public IReadOnlyList<double> HoursByFitter => [.. Enumerable.Range(1, Fitters).Select(f =>
        Steps.Where(s => s.Turn.Fitters.Contains(f)).Sum(s => s.Turn.EndH - s.Turn.StartH))];

    /// <summary>When the last swap ends, in hours after the stop begins.</summary>
    public double LastEndH => Steps.Select(s => s.Turn.EndH).DefaultIfEmpty(0).Max();

    /// <summary>How many hours the work lasts beyond the stop.</summary>
    public double HoursOver => Math.Max(0, LastEndH - Window.Length.TotalHours);

    /// <summary>When a swap begins by the clock.</summary>
    public DateTimeOffset StartOf(PackageStep step) => Window.Start.AddHours(step.Turn.StartH);

    /// <summary>The package of a stop in the saved plan; null when no swap is planned in it.</summary>
    public static WorkPackage? Of(KeptPlanView view, string windowId)
    {
        var chains = view.Plan.Placements.Where(p => p.Window?.Id == windowId).Select(p => p.Chain).ToHashSet();
        if (chains.Count == 0) return null;
        var window = view.Picture.Input.Windows.Single(w => w.Id == windowId);
        var tasks = view.Picture.Input.Tasks.Where(t => chains.Contains(t.Chain)).ToArray();
        var joined = PlannedShortening.LeftBy(view.Plan, view.Picture.Input);
        var fitters = StopSequence.FittersOf(window.CrewHours, window.Length.TotalHours, tasks);
        return new WorkPackage
        {
            Window = window,
            Fitters = fitters,
            Steps = [.. StopSequence.Of(tasks, fitters).Select(t => new PackageStep(t, view.JobOf(t.Chain)!))],
            Picks = [.. tasks.SelectMany(t => t.Needs).Concat(joined.Where(s => s.WindowId == windowId).SelectMany(s => s.Needs))
                .GroupBy(n => n.Part)
                .Select(g => new PickLine(g.Key, g.Sum(n => n.Quantity), ThereFor(view, g.Key, window, joined))
                {
                    Numbers = NumbersOf(view, g.Key, tasks),
                })
                .OrderBy(p => p.Part.Kind).ThenBy(p => p.Part.Designation, StringComparer.Ordinal)],
        };
    }

    /// <summary>The numbers of a part, of those chains and sprockets whose record has one.</summary>
    private static IReadOnlyList<string> NumbersOf(KeptPlanView view, Part part, IEnumerable<SwapTask> tasks) =>
    [
        .. from task in tasks
           where task.Needs.Any(need => need.Part == part)
           let row = view.Picture.Faces[task.Chain].Row
           let number = part.Kind switch
           {
               PartKind.Chain => row.StoreNumber,
               PartKind.Sprocket => row.SprocketNumber,
               _ => "",
           }
           where number.Length > 0
           group number by number into same
           select same.Key,
    ];

    /// <summary>What is there of a part for a stop: what earlier swaps and shortenings take is gone by then.</summary>
    private static int? ThereFor(
        KeptPlanView view, Part part, ShutdownWindow window, IReadOnlyList<PlannedShortening> joined)
    {
        if (view.Picture.Input.Spares.FirstOrDefault(s => s.Part == part) is not { } spare) return null;
        var before = view.Plan.Placements.Where(p => p.Window is { } w && w.Start < window.Start)
            .Select(p => p.Chain).ToHashSet();
        return Math.Max(0, spare.AvailableAt(window.Start) - view.Picture.Input.Tasks.Where(t => before.Contains(t.Chain))
            .SelectMany(t => t.Needs).Concat(joined.Where(s => s.At < window.Start).SelectMany(s => s.Needs))
            .Where(n => n.Part == part).Sum(n => n.Quantity));
    }
}
