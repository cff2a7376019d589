using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Notices;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>
/// Takes what another system reports of the work orders of planned swaps. A report is stored first and worked off after that;
/// what it contradicts is told, and settled by a person.
/// </summary>
public sealed class WorkOrderDesk(
    IDbContextFactory<WearDb> databases, AfterStopDesk afterStop, IntakeDesk intake, PlantClock plant, PlantNoticeDesk notices,
    PlantNews news)
{
    private const string Job = "work orders";

    private readonly ReportedWork work = new(afterStop, intake);

    /// <summary>Takes a report: when it answers Taken, it counts; Waiting says what it contradicts.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewWorkOrderReport report, CancellationToken ct)
    {
        var now = (await plant.NowAsync(ct)).Now;
        if (WorkOrderEntryCheck.Faults(report, now) is { Count: > 0 } faults) return new IntakeAnswer.Refused(faults);
        var (row, isKnown) = await KeepAsync(report.ToRow(now), ct);
        if (isKnown && row.Fingerprint != Fingerprint.Of(report.Told))
            return new IntakeAnswer.Refused([new("key", $"This key came before with something else. Give every entry its own.")]);
        await WorkOffAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var kept = await db.WorkOrderReports.AsNoTracking().SingleAsync(r => r.Id == row.Id, ct);
        return kept.Standing == WorkOrderStanding.InConflict
            ? new IntakeAnswer.Waiting(kept.Id, kept.Conflict)
            : new IntakeAnswer.Taken(kept.Id, isKnown);
    }

    /// <summary>Works off what was stored and is not worked off yet, from the first to the last.</summary>
    /// <returns>How many reports that were.</returns>
    public async Task<int> WorkOffAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var ids = await db.WorkOrderReports.Where(r => r.Standing == WorkOrderStanding.Received).OrderBy(r => r.Id)
            .Select(r => r.Id).ToListAsync(ct);
        foreach (var id in ids) await WorkOffAsync(id, ct);
        if (ids.Count > 0) await TellAsync(db, Job, ct);
        return ids.Count;
    }

    /// <summary>Settles a conflict: the report is taken against what is known here, or what is known here stays.</summary>
    /// <returns>Why that cannot be done; null when it is.</returns>
    public async Task<Phrase?> SettleAsync(long id, bool takesTheirs, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.WorkOrderReports.SingleOrDefaultAsync(r => r.Id == id, ct) is not { } report)
            return $"There is no such report.";
        var settled = takesTheirs ? WorkOrderStanding.TheirsTaken : WorkOrderStanding.OursKept;
        if (report.Standing == settled) return null;
        if (report.Standing != WorkOrderStanding.InConflict) return $"There is nothing to settle: the report is in no conflict.";
        var known = await KnownAsync(db, report, ct);
        if (takesTheirs)
        {
            if (known.Standing is not { } standing) return $"No planned swap has the id {report.Swap}. It can only be left.";
            if (await work.TakeAsync(db, report, known, by, ct) is { IsEmpty: false } why) return why;
            report.SwapId = standing.Id;
        }

        (report.Standing, report.SettledBy, report.SettledAt) = (settled, by, known.Time.Now);
        await db.SaveChangesAsync(ct);
        await TellAsync(db, by, ct);
        Tell(known);
        return null;
    }

    private async Task WorkOffAsync(long id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var report = await db.WorkOrderReports.SingleAsync(r => r.Id == id, ct);
        var known = await KnownAsync(db, report, ct);
        var conflict = WorkOrderConflict.Of(report, known);
        if (conflict.IsEmpty && known.Swap is { } swap) conflict = await work.UseAsync(db, report, swap, ct);
        (report.SwapId, report.Conflict) = (known.Swap?.Id, conflict);
        report.Standing = conflict.IsEmpty ? WorkOrderStanding.Used : WorkOrderStanding.InConflict;
        await db.SaveChangesAsync(ct);
        Tell(known);
    }

    /// <summary>Stores a report, or finds it where it is stored already.</summary>
    private async Task<(WorkOrderReportRow Row, bool IsKnown)> KeepAsync(WorkOrderReportRow row, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.WorkOrderReports.AsNoTracking()
            .SingleOrDefaultAsync(r => r.KeyOwner == row.KeyOwner && r.Key == row.Key, ct) is { } known) return (known, true);
        db.WorkOrderReports.Add(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return (row, false);
    }

    private async Task<ReportedSwap> KnownAsync(WearDb db, WorkOrderReportRow report, CancellationToken ct)
    {
        var told = SwapId.Read(report.Swap);
        var swap = await db.Swaps.SingleOrDefaultAsync(s => s.Id == told, ct);
        var before = await db.WorkOrderReports.AsNoTracking().Where(r => told != null && r.SwapId == told && r.Id < report.Id
            && (r.Standing == WorkOrderStanding.Used || r.Standing == WorkOrderStanding.TheirsTaken))
            .OrderBy(r => r.Id).ToListAsync(ct);
        return new ReportedSwap
        {
            Swap = swap,
            Standing = swap is null ? null : await db.Swaps.OrderBy(s => s.Id).FirstOrDefaultAsync(
                s => s.ChainId == swap.ChainId && s.Id >= swap.Id
                    && (s.Outcome == SwapEnd.Planned || s.Outcome == SwapEnd.Done), ct) ?? swap,
            Order = WorkOrder.Of(before),
            DoneAt = swap is null ? null : (await SwapReport.EventAsync(db, swap, ct))?.At,
            ReplacedAt = swap is not null && await ReportedWork.ReplacementsBesideAsync(db, swap, ct) is [.., var last]
                ? last.At ?? last.ReceivedAt
                : null,
            Time = await plant.NowAsync(ct),
        };
    }

    private void Tell(ReportedSwap known)
    {
        if (known.Swap is { } swap) news.Tell([swap.ChainId]);
    }

    /// <summary>
    /// Raises the notice of conflicts while there are any, and ends it after the last: in a write transaction, since others work
    /// off at the same time.
    /// </summary>
    private async Task TellAsync(WearDb db, string by, CancellationToken ct)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var open = await db.WorkOrderReports.CountAsync(r => r.Standing == WorkOrderStanding.InConflict, ct);
        if (open == 0) await notices.EndAsync(db, PlantNoticeKind.WorkOrderConflict, by, ct);
        else
        {
            await notices.RaiseAsync(
                db, PlantNoticeKind.WorkOrderConflict,
                Phrase.Counted(open, $"{open} report on a work order contradicts what is known here.",
                    $"{open} reports on work orders contradict what is known here."),
                $"Settle it at Plan, Work orders: take what they report, or keep what stands here.", ct);
        }

        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
