using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>Writes the job card of a chain in the plan that is kept.</summary>
public sealed class JobCardQuery(KeptPlan kept)
{
    /// <summary>The card; null when the chain is not in the plan.</summary>
    public async Task<JobCard?> AskAsync(string chain, CancellationToken ct)
    {
        var view = await kept.AskAsync(ct);
        if (view.JobOf(chain) is not { } job) return null;
        var (row, time, pitches) = (job.Face.Row, view.Picture.Time, PlanQuery.PitchesOf(job.Face.Row));
        var shutdown = job.Placement.Window is { } w
            ? $"{time.Moment(w.Start)} to {time.Moment(w.End)}{(w.Crew.Length > 0 ? ", crew " + w.Crew : "")}"
            : "not placed in a shutdown yet";
        var sprockets = job.Task.TakesSprockets ? ": replace them with the chain" : ": look at their teeth";
        return new JobCard
        {
            Chain = chain,
            Facts =
            [
                ("Line, position", string.Join(", ", new[] { row.Line, row.Position }.Where(t => t.Length > 0))),
                ("Shutdown", shutdown),
                ("Chain", FormattableString.Invariant(
                    $"{PlanQuery.TypeOf(row)}, {row.Family.Words}, pitch {row.PitchMm:0.###} mm")),
                ("Length", row.Pitches is null
                    ? "not on record: count the old chain"
                    : $"{pitches} pitches: {JobCard.CutInWords(job.Cut)}"),
                ("From the store", JobCard.PartsInWords(job.Task.Needs)),
                ("Sprockets", row.SprocketTeeth.Count > 0
                    ? string.Join(" and ", row.SprocketTeeth.Select(z => $"{z} teeth")) + sprockets
                    : "not on record"),
                ("Work", FormattableString.Invariant($"{job.Task.Hours:0.#} h, {job.Task.People} at once")),
                ("Swapped together with", job.Together.Count > 0 ? string.Join(", ", job.Together) : "–"),
                ("Old chain", $"{Show.Percent(job.Face.ElongationPct)}, {PlanWords.Band(job.Face, time)}"),
                ("Note", job.Note.Length > 0 ? job.Note : "–"),
            ],
            Cautions = Caution.For(row.ToCard()),
            Tools = JobCard.ToolsFor(row.Family),
            Steps = JobCard.StepsFor(row.Family, job.Cut, pitches),
        };
    }
}
