using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Planning.Swaps;

namespace WearWatch.Dashboard.Planner;

/// <summary>Makes the job card of a chain in the plan.</summary>
public sealed class JobCardQuery(KeptPlan kept)
{
    /// <summary>The card; null when the chain is not in the plan.</summary>
    public async Task<JobCard?> AskAsync(string chain, CancellationToken ct)
    {
        var view = await kept.AskAsync(ct);
        if (!view.Picture.Faces.TryGetValue(chain, out var face)) return null;
        var (row, time) = (face.Row, view.Picture.Time);
        var placement = view.Plan.Placements.Single(p => p.Chain == chain);
        var task = view.Picture.Input.Tasks.Single(t => t.Chain == chain);
        var pitches = row.Pitches ?? PlanQuery.UsualPitches;
        var cut = ChainCut.For(row.Family, pitches);
        var together = view.Picture.Input.Tasks.Where(t => t.ParallelGroup.Length > 0 && t.ParallelGroup == task.ParallelGroup && t.Line == task.Line && t.Chain != chain);
        return new JobCard
        {
            Chain = chain,
            Facts =
            [
                ("Line, position", string.Join(", ", new[] { row.Line, row.Position }.Where(t => t.Length > 0))),
                ("Shutdown", placement.Window is { } w ? $"{time.Moment(w.Start)} to {time.Moment(w.End)}{(w.Crew.Length > 0 ? ", crew " + w.Crew : "")}" : "not placed in a shutdown yet"),
                ("Chain", FormattableString.Invariant($"{PlanQuery.TypeOf(row)}, {TradeWords.Of(row.Family)}, pitch {row.PitchMm:0.###} mm")),
                ("Length", row.Pitches is null ? "not on record: count the old chain" : $"{pitches} pitches: {JobCard.CutInWords(cut)}"),
                ("From the store", JobCard.PartsInWords(task.Needs)),
                ("Sprockets", row.SprocketTeeth.Count > 0
                    ? string.Join(" and ", row.SprocketTeeth.Select(z => $"{z} teeth")) + (task.TakesSprockets ? ": replace them with the chain" : ": look at their teeth")
                    : "not on record"),
                ("Work", FormattableString.Invariant($"{task.Hours:0.#} h, {task.People} at once")),
                ("Swapped together with", together.Any() ? string.Join(", ", together.Select(t => t.Chain)) : "–"),
                ("Old chain", $"{Show.Percent(face.ElongationPct)}, {PlanWords.Band(face, time)}"),
                ("Note", view.Picture.Swaps.GetValueOrDefault(chain)?.Note is { Length: > 0 } note ? note : "–"),
            ],
            Cautions = Caution.For(row.ToCard()),
            Tools = JobCard.ToolsFor(row.Family),
            Steps = JobCard.StepsFor(row.Family, cut, pitches),
        };
    }
}
