using Microsoft.EntityFrameworkCore;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Intake;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>
/// Does with a swap what a report on its work order says, by the same way as a person does after the stop: a swap that was done
/// is the event of its replacement.
/// </summary>
/// <remarks>Each can be done again after a kill: it then changes nothing more. Each answer is empty, or says why not.</remarks>
internal sealed class ReportedWork(AfterStopDesk afterStop, IntakeDesk intake)
{
    private const string Overruled = "The report of the work order was taken instead.";

    /// <summary>Uses a report that contradicts nothing.</summary>
    public async Task<Phrase> UseAsync(WearDb db, WorkOrderReportRow report, SwapRow swap, CancellationToken ct)
    {
        if (report.State != WorkOrderState.Done) return Phrase.None;
        if (swap.Outcome == SwapEnd.Done)
        {
            swap.HoursWorked ??= report.HoursWorked;
            return Phrase.None;
        }

        var (told, unknown) = await DoneAsync(db, report, swap, ct);
        if (unknown.Count == 0) return WhyNot(await afterStop.DoneAsync(swap.Id, told, report.ToldBy, ct));
        return $"No part is called {string.Join(", ", unknown)}. Taken all the same, the stock of it stays as it is.";
    }

    /// <summary>Takes a report against what is known here.</summary>
    public async Task<Phrase> TakeAsync(WearDb db, WorkOrderReportRow report, ReportedSwap known, string by, CancellationToken ct)
    {
        var swap = known.Standing!;
        if (report.State != WorkOrderState.Done)
            return swap.Outcome == SwapEnd.Done ? await afterStop.UndoAsync(swap.Id, by, ct) ?? Phrase.None : Phrase.None;
        if (swap.Outcome == SwapEnd.Done) return await CorrectAsync(db, report, swap, by, ct);
        if (known.ReplacedAt is not null)
        {
            foreach (var other in await ReplacementsBesideAsync(db, swap, ct))
                await intake.WithdrawEventAsync(other.Id, by, Overruled, ct);
        }

        await ReopenAsync(db, swap, ct);
        var (told, _) = await DoneAsync(db, report, swap, ct);
        return WhyNot(await afterStop.DoneAsync(swap.Id, told, by, ct));
    }

    /// <summary>The replacements of a swap's chain that were recorded beside the plan since the swap was decided.</summary>
    public static async Task<IReadOnlyList<EventRow>> ReplacementsBesideAsync(WearDb db, SwapRow swap, CancellationToken ct) =>
        [.. (await db.StandingEventsAsync(swap.ChainId, ct)).Where(e => e.Kind == Chains.ChainEventKind.Replacement
            && (e.At ?? e.ReceivedAt) >= swap.DecidedAt && (e.KeyOwner, e.Key) != (KeyOwner.Program, SwapReport.KeyOf(swap)))];

    /// <summary>What was reported here stays, but for what the other system tells otherwise.</summary>
    private async Task<Phrase> CorrectAsync(WearDb db, WorkOrderReportRow report, SwapRow swap, string by, CancellationToken ct)
    {
        var ours = await SwapReport.ReadAsync(db, swap, ct);
        var (theirs, _) = await DoneAsync(db, report, swap, ct);
        if (await afterStop.UndoAsync(swap.Id, by, ct) is { } no) return no;
        var told = ours with
        {
            At = theirs.At,
            HoursWorked = theirs.HoursWorked ?? ours.HoursWorked,
            WithSprockets = theirs.WithSprockets || ours.WithSprockets,
            Material = theirs.Material,
            FromStock = theirs.Material is not null || ours.FromStock,
        };
        var answer = await afterStop.DoneAsync(swap.Id, told, by, ct);
        if (answer is IntakeAnswer.Refused) await afterStop.DoneAsync(swap.Id, ours, by, ct);
        return WhyNot(answer);
    }

    /// <summary>A swap that was called off, or reported as not done, is to be reported anew.</summary>
    private static async Task ReopenAsync(WearDb db, SwapRow swap, CancellationToken ct)
    {
        if (swap.Outcome == SwapEnd.Planned) return;
        (swap.Outcome, swap.OutcomeNote, swap.OutcomeBy, swap.OutcomeAt) = (SwapEnd.Planned, "", "", null);
        swap.Undone++;
        await db.SaveChangesAsync(ct);
    }

    private static async Task<(SwapDone Told, IReadOnlyList<string> Unknown)> DoneAsync(
        WearDb db, WorkOrderReportRow report, SwapRow swap, CancellationToken ct)
    {
        var material = report.Material is null
            ? null
            : MaterialParts.Find(
                report.Material, await db.Chains.SingleAsync(c => c.Id == swap.ChainId, ct), await db.Spares.ToListAsync(ct));
        return (new SwapDone(report.DoneAt!.Value, CounterH: null, Lot: "", Broke: false, TakeUpMm: null, report.Note)
        {
            HoursWorked = report.HoursWorked,
            WithSprockets = material?.Needs.Any(n => n.Part.Kind == PartKind.Sprocket) ?? false,
            Material = material?.Needs,
            Confirmed = true, // what there was to ask is asked as a conflict
        }, material?.Unknown ?? []);
    }

    private static Phrase WhyNot(IntakeAnswer answer) => answer is IntakeAnswer.Refused refused
        ? Phrase.Join(" ", refused.Refusals.Select(r => r.Reason))
        : Phrase.None;
}
