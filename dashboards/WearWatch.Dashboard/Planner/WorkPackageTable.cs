using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>One list of a work package: what the page, the paper and the sheet show alike.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Head">The columns.</param>
/// <param name="Rows">The rows, in words.</param>
public sealed record WorkPackageTable(string Title, IReadOnlyList<string> Head, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>Whether the second column names chains.</summary>
    public bool LinksChains { get; private init; }

    /// <summary>The sequence, the hours of each fitter, the pick list and the cut list.</summary>
    public static IReadOnlyList<WorkPackageTable> Of(WorkPackage package) =>
    [
        new(T["Sequence"], [T["Start"], T["Chain"], T["Place"], T["Hours"], T["Who"]],
            [.. package.Steps.Select(s => (IReadOnlyList<string>)[
                PackageWords.Start(package, s), s.Job.Face.Row.Name, s.Job.Face.Row.Position,
                PackageWords.Hours(s.Job.Task.Hours), T[PackageWords.Who(s)]])]) { LinksChains = true },
        new(T["Hours by fitter"], [T["Fitter"], T["Hours"]],
            [.. package.HoursByFitter.Select((h, i) => (IReadOnlyList<string>)[T[$"fitter {i + 1}"], PackageWords.Hours(h)])]),
        new(T["Pick list"], [T["Part"], T["Amount"], T["In the store by then"], T["Part number"]],
            [.. package.Picks.Select(p => (IReadOnlyList<string>)[
                p.Part.ToString(), T[PackageWords.Quantity(p.Quantity, p.Part)], T[PackageWords.Picked(p)],
                string.Join(", ", p.Numbers)])]),
        new(T["Cut list"], [T["Chain type"], T["Chain"], T["Cut"], T["Attachments"], T["Store number"]],
            [.. package.Cuts.Select(j => (IReadOnlyList<string>)[
                PlanQuery.TypeOf(j.Face.Row), j.Face.Row.Name, T[PackageWords.Cut(j)], j.Face.Row.Attachments,
                j.Face.Row.StoreNumber])]) { LinksChains = true },
    ];
}
