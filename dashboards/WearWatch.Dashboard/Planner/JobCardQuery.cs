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
        var holds = row.HoldsLoad;
        var shutdown = job.Placement.Window is { } w
            ? $"{time.Moment(w.Start)} to {time.Moment(w.End)}{(w.Crew.Length > 0 ? ", crew " + w.Crew : "")}"
            : job.Placement.OutOfUseFrom is not null ? "none before that day"
            : "not placed in a shutdown yet";
        var sprockets = job.Task.TakesSprockets ? ": replace them with the chain" : ": look at their teeth";
        return new JobCard
        {
            Chain = chain,
            Facts =
            [
                .. LoadFacts(view, job),
                ("Line, position", string.Join(", ", new[] { row.Line, row.Position }.Where(t => t.Length > 0))),
                ("Shutdown", shutdown),
                ("Chain", FormattableString.Invariant(
                    $"{PlanQuery.TypeOf(row)}, {row.Family.Words}, pitch {row.PitchMm:0.###} mm")),
                ("Length", row.Pitches is null ? "not on record: count the old chain"
                    : holds ? $"{pitches} pitches, a whole chain as it comes with its certificate"
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
            Tools = holds ? LiftingJob.ToolsFor(row.Family) : JobCard.ToolsFor(row.Family),
            Steps = holds
                ? LiftingJob.StepsFor(pitches, [chain, .. job.Together])
                : JobCard.StepsFor(row.Family, job.Cut, pitches),
            ToWrite = holds ? LiftingJob.ToWrite : JobCard.UsuallyToWrite,
        };
    }

    /// <summary>What is said first of a chain that holds a load: what is wrong, or by when it is out of use.</summary>
    private static IEnumerable<(string Name, string Value)> LoadFacts(KeptPlanView view, SwapJob job)
    {
        var said = view.Plan.Remarks.Where(r => r.IsOfLoad && r.Subject == job.Task.Chain).ToArray();
        foreach (var remark in said) yield return (PlanWords.Of(remark.Kind), $"{remark.Why} {remark.WhatWouldHelp}");
        if (said.Length == 0 && job.Task.OutOfUseBy is { } by)
        {
            yield return (
                "Holds a load", HardDateWords.OutOfUse(by, view.Picture.Time) + ", unless it is swapped before");
        }
    }
}
