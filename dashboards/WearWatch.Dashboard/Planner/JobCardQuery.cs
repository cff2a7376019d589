using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Planning.Swaps;
using WearWatch.Plant.Planning;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Planner;

/// <summary>Writes the job card of a chain in the saved plan.</summary>
public sealed class JobCardQuery(KeptPlan kept, IDbContextFactory<WearDb> databases)
{
    /// <summary>The card; null when the chain is not in the plan.</summary>
    public async Task<JobCard?> AskAsync(string chain, CancellationToken ct) =>
        await OfAsync(await kept.AskAsync(ct), chain, ct);

    /// <summary>The card of a chain in a plan; null when it is not in it.</summary>
    public async Task<JobCard?> OfAsync(KeptPlanView view, string chain, CancellationToken ct) =>
        view.JobOf(chain) is { Face.Row: var row } job ? Of(view, job, await RecordAsync(row.Id, row.ToCard(), ct)) : null;

    private static JobCard Of(KeptPlanView view, SwapJob job, SprocketHistory record)
    {
        var (row, time, pitches) = (job.Face.Row, view.Picture.Time, PlanQuery.PitchesOf(job.Face.Row));
        var holds = row.HoldsLoad;
        var shutdown = job.Placement.Window is { } w
            ? T[$"{time.Moment(w.Start)} to {time.Moment(w.End)}"] + (w.Crew.Length > 0 ? ", " + T[$"crew {w.Crew}"] : "")
            : job.Placement.OutOfUseFrom is not null ? T["none before that day"]
            : T["not placed in a shutdown yet"];
        return new JobCard
        {
            Chain = row.Name,
            Facts =
            [
                .. LoadFacts(view, job),
                (T["Line, position"], string.Join(", ", new[] { row.Line, row.Position }.Where(t => t.Length > 0))),
                (T["Shutdown"], shutdown),
                (T["Chain"], T[$"{PlanQuery.TypeOf(row)}, {row.Family.Words}, pitch {row.PitchMm:0.###} mm"]),
                (T["Length"], row.Pitches is null ? T["not on record: count the old chain"]
                    : holds ? T[$"{pitches:#,0} pitches, a whole chain as it comes with its certificate"]
                    : T[$"{pitches:#,0} pitches: {JobCard.CutInWords(job.Cut)}"]),
                (T["From the store"], JobCard.PartsInWords(job.Task.Needs)),
                .. Kit(row.ToCard().Kit),
                (T["Sprockets"], row.SprocketTeeth.Count > 0 ? SprocketsOf(job, record) : T["not on record"]),
                (T["Work"], WorkOf(job.Task)),
                (T["Swapped together with"], job.Together.Count > 0 ? string.Join(", ", job.Together) : Show.Nothing),
                (T["Old chain"], $"{Show.Percent(job.Face.ElongationPct)}, {PlanWords.Band(job.Face, time)}"),
                .. PlanWords.Shorten(job.Face, time) is { } shorten ? [(T["Take-up"], shorten)] : Array.Empty<(string, string)>(),
                (T["Note"], job.Note.Length > 0 ? job.Note : Show.Nothing),
            ],
            Cautions = [.. Caution.For(row.ToCard()).Select(caution => T[caution])],
            Tools = holds ? LiftingJob.ToolsFor(row.Family) : JobCard.ToolsFor(row.Family),
            Steps = holds
                ? LiftingJob.StepsFor(pitches, [row.Name, .. job.Together])
                : JobCard.StepsFor(row.Family, job.Cut, pitches),
            ToWrite = holds ? LiftingJob.ToWrite : JobCard.UsuallyToWrite,
        };
    }

    private static string WorkOf(SwapTask task) => T[Phrase.Counted(
        task.People, $"{task.Hours:0.#} h, {task.People} person", $"{task.Hours:0.#} h, {task.People} people at once")];

    private static string SprocketsOf(SwapJob job, SprocketHistory record)
    {
        var teeth = string.Join(T[" and "], job.Face.Row.SprocketTeeth.Select(z => T[$"{z:#,0} teeth"]));
        return job.Face.SprocketsAreWorn ? T[$"{teeth}: worn, replace them with the chain"]
            : job.Task.TakesSprockets ? T[$"{teeth}: replace them with the chain"]
            : record.AreToLieReady ? T[$"{teeth}: {record.ChainsRun} chains have run on them, have new ones ready"]
            : T[$"{teeth}: look at their teeth"];
    }

    private async Task<SprocketHistory> RecordAsync(int chainId, ChainCard card, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return SprocketHistory.Of(card, [.. (await db.StandingEventsAsync(chainId, ct)).Select(e => e.ToEvent(card.Name))]);
    }

    /// <summary>What is laid out besides pitches and links, as far as it is on record.</summary>
    private static IEnumerable<(string Name, string Value)> Kit(SpareKit kit)
    {
        if (kit.Attachments.Length > 0) yield return (T["Attachments"], kit.Attachments);
        if (kit.StoreNumber.Length > 0) yield return (T["Store number"], kit.StoreNumber);
        if (kit.SprocketNumber.Length > 0) yield return (T["Sprocket number"], kit.SprocketNumber);
    }

    /// <summary>What is said first of a chain that holds a load: what is wrong, or by when it is out of use.</summary>
    private static IEnumerable<(string Name, string Value)> LoadFacts(KeptPlanView view, SwapJob job)
    {
        var said = view.Plan.Remarks.Where(r => r.IsOfLoad && r.Subject == job.Task.Chain).ToArray();
        foreach (var remark in said) yield return (PlanWords.Of(remark.Kind), $"{T[remark.Why]} {T[remark.WhatWouldHelp]}");
        if (said.Length == 0 && job.Task.OutOfUseBy is { } by)
        {
            yield return (
                T["Holds a load"], T[$"{HardDateWords.OutOfUse(by, view.Picture.Time)}, unless it is swapped before"]);
        }
    }
}
