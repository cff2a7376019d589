using System.Globalization;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Planner;

/// <summary>The board as it is drawn.</summary>
/// <param name="Days">The days with a shutdown of a line that has a chain to swap.</param>
/// <param name="End">The horizon's end in words.</param>
/// <param name="Lines">The lines.</param>
public sealed record PlanGridView(IReadOnlyList<DateOnly> Days, string End, IReadOnlyList<PlanLine> Lines)
{
    public static PlanGridView Of(PlanDraft draft)
    {
        var (time, input) = (draft.Picture.Time, draft.Board.Input);
        var lines = input.Tasks.Select(t => t.Line).Distinct().Order(StringComparer.Ordinal).ToArray();
        var windows = input.Windows.Where(w => lines.Contains(w.Line)).OrderBy(w => w.Start).ToArray();
        var days = windows.Select(w => time.DateOf(w.Start)).Distinct().ToArray();
        var parts = new PartStates(draft);
        var waiting = draft.Board.CostsOfWaiting(draft.Windows);
        var crewHours = input.Tasks.ToDictionary(t => t.Chain, t => t.CrewHours);
        var work = draft.Plan.Placements.Where(p => p.Window is not null)
            .GroupBy(p => p.Window!.CrewTurn).ToDictionary(g => g.Key, g => g.Sum(p => crewHours[p.Chain]));
        var hours = input.Windows.GroupBy(w => w.CrewTurn).ToDictionary(g => g.Key, g => g.Max(w => w.CrewHours));
        return new PlanGridView(
            days, PlanWords.BriefDate(input.HorizonEnd, time), [.. lines.Select(line => new PlanLine(line, [.. CellsOf(line)]))]);

        IEnumerable<PlanCell> CellsOf(string line)
        {
            yield return new PlanCell(line, "after the horizon", null, true,
                [.. draft.Plan.Placements.Where(p => p.Window is null && draft.Picture.Faces[p.Chain].Row.Line == line)
                    .Select(p => CardOf(draft, p, parts, waiting))], null);
            foreach (var day in days)
            {
                // Two shutdowns of a line on one day: the first keeps the cell, the others stay reachable through the swap's
                // panel.
                var here = windows.Where(w => w.Line == line && time.DateOf(w.Start) == day).ToArray();
                yield return new PlanCell(
                    line, PlantTime.Day(day), here.Length > 0 ? here[0].Id : null, here.Length > 0,
                    [.. draft.Plan.Placements.Where(p => p.Window is { } w && here.Any(h => h.Id == w.Id))
                        .Select(p => CardOf(draft, p, parts, waiting))],
                    here.Length > 0 ? LoadOf(here[0]) : null);
            }
        }

        CellLoad? LoadOf(ShutdownWindow window) => work.GetValueOrDefault(window.CrewTurn) is > 0 and var sum
            ? new CellLoad(string.Create(CultureInfo.InvariantCulture, $"{sum:0.#} / {hours[window.CrewTurn]:0.#} h"),
                sum > hours[window.CrewTurn])
            : null;
    }

    private static PlanCard CardOf(
        PlanDraft draft, Placement placement, PartStates parts, IReadOnlyDictionary<string, double> waiting)
    {
        var (face, place) = (draft.Picture.Faces[placement.Chain], draft.PlaceOf(placement.Chain));
        return new PlanCard
        {
            Chain = placement.Chain,
            Line = face.Row.Line,
            WindowId = placement.Window?.Id,
            Placing = place.Placing,
            Condition = face.Condition,
            Band = PlanWords.Band(face, draft.Picture.Time),
            Risk = placement.Own.ProbabilityPast,
            Parts = parts.Of(placement),
            LaterCosts = waiting.TryGetValue(placement.Chain, out var change) ? change : null,
            HasNote = place.Note.Length > 0,
            OutOfUse = OutOfUseOf(draft, placement),
        };
    }

    private static string? OutOfUseOf(PlanDraft draft, Placement placement) =>
        placement.OutOfUseFrom is { } from ? HardDateWords.OutOfUse(from, draft.Picture.Time)
        : draft.Board.OutOfUseBy(placement.Chain) is { } by ? "out of use by " + PlanWords.BriefDate(by, draft.Picture.Time)
        : null;
}
