using System.Globalization;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;

namespace WearWatch.Dashboard.Planner;

/// <summary>The board as it is drawn.</summary>
/// <param name="Days">The days with a shutdown of a line that has a chain to swap.</param>
/// <param name="End">The horizon's end in words.</param>
/// <param name="Lines">The lines.</param>
/// <param name="CrewByDay">The work of all crews on each day against their hours.</param>
public sealed record PlanGridView(
    IReadOnlyList<DateOnly> Days, string End, IReadOnlyList<PlanLine> Lines, IReadOnlyList<CellLoad> CrewByDay)
{
    /// <param name="draft">The plan.</param>
    /// <param name="filter">What of it is drawn.</param>
    /// <param name="selected">The chain that is chosen: its line's shutdowns are drawn though they are empty.</param>
    public static PlanGridView Of(PlanDraft draft, BoardFilter filter, string? selected)
    {
        var (time, input) = (draft.Picture.Time, draft.Board.Input);
        var shown = draft.Plan.Placements.Where(p => filter.Shows(draft.Picture.Faces[p.Chain])).ToArray();
        var lines = shown.Select(p => draft.Picture.Faces[p.Chain].Row.Line).Distinct().Order(StringComparer.Ordinal).ToArray();
        var windows = input.Windows.Where(w => lines.Contains(w.Line)).OrderBy(w => w.Start).ToArray();
        var open = selected is null ? "" : draft.Picture.Faces[selected].Row.Line;
        var busy = shown.Select(p => p.Window?.Id).OfType<string>().ToHashSet();
        var days = windows.Where(w => !filter.Folds || busy.Contains(w.Id) || (open.Length > 0 && w.Line == open))
            .Select(w => time.DateOf(w.Start)).Distinct().ToArray();
        var parts = new PartStates(draft);
        var waiting = draft.Board.CostsOfWaiting(draft.Windows);
        var crewHours = input.Tasks.ToDictionary(t => t.Chain, t => t.CrewHours);
        var work = draft.Plan.Placements.Where(p => p.Window is not null)
            .GroupBy(p => p.Window!.CrewTurn).ToDictionary(g => g.Key, g => g.Sum(p => crewHours[p.Chain]));
        var hours = input.Windows.GroupBy(w => w.CrewTurn).ToDictionary(g => g.Key, g => g.Max(w => w.CrewHours));
        return new PlanGridView(
            days, PlanWords.BriefDate(input.HorizonEnd, time), [.. lines.Select(line => new PlanLine(line, [.. CellsOf(line)]))],
            [.. days.Select(CrewOn)]);

        CellLoad CrewOn(DateOnly day)
        {
            var turns = input.Windows.Where(w => time.DateOf(w.Start) == day).Select(w => w.CrewTurn).Distinct().ToArray();
            var (sum, there) = (turns.Sum(t => work.GetValueOrDefault(t)), turns.Sum(t => hours[t]));
            return new CellLoad(
                string.Create(CultureInfo.CurrentCulture, $"{sum:0.#} / {there:0.#} h"),
                turns.Any(t => work.GetValueOrDefault(t) > hours[t]));
        }

        IEnumerable<PlanCell> CellsOf(string line)
        {
            yield return new PlanCell(line, T["after the horizon"], null, true,
                [.. shown.Where(p => p.Window is null && draft.Picture.Faces[p.Chain].Row.Line == line)
                    .Select(p => CardOf(draft, p, parts, waiting))], null);
            foreach (var day in days)
            {
                // Two shutdowns of a line on one day: the first keeps the cell, the others stay reachable through the swap's
                // panel.
                var here = windows.Where(w => w.Line == line && time.DateOf(w.Start) == day).ToArray();
                yield return new PlanCell(
                    line, PlantTime.Day(day), here.Length > 0 ? here[0].Id : null, here.Length > 0,
                    [.. shown.Where(p => p.Window is { } w && here.Any(h => h.Id == w.Id))
                        .Select(p => CardOf(draft, p, parts, waiting))],
                    here.Length > 0 ? LoadOf(here[0]) : null);
            }
        }

        CellLoad? LoadOf(ShutdownWindow window) => work.GetValueOrDefault(window.CrewTurn) is > 0 and var sum
            ? new CellLoad(T[$"{sum:0.#} / {hours[window.CrewTurn]:0.#} h"], sum > hours[window.CrewTurn])
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
            Shorten = PlanWords.Shorten(face, draft.Picture.Time),
            Risk = placement.Own.ProbabilityPast,
            Parts = parts.Of(placement),
            LaterCosts = waiting.TryGetValue(placement.Chain, out var change) ? change : null,
            HasNote = place.Note.Length > 0,
            Order = draft.Picture.Orders.GetValueOrDefault(placement.Chain) is { } order ? T[WorkOrderWords.Of(order)] : null,
            OutOfUse = OutOfUseOf(draft, placement),
        };
    }

    private static string? OutOfUseOf(PlanDraft draft, Placement placement) =>
        placement.OutOfUseFrom is { } from ? T[HardDateWords.OutOfUse(from, draft.Picture.Time)]
        : draft.Board.OutOfUseBy(placement.Chain) is { } by ? T[$"out of use by {PlanWords.BriefDate(by, draft.Picture.Time)}"]
        : null;
}
