using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>The one way in for reports of thorough examinations.</summary>
public sealed class ExaminationDesk(IDbContextFactory<WearDb> database, ChainReview review, PlantClock plantClock)
{
    /// <summary>Takes a report: when it answers Taken, it is committed and the chain's state says what it found.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewExamination report, CancellationToken ct = default)
    {
        var time = await plantClock.NowAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await LiftingChains.FindAsync(db, report.Chain, ct) is not { } chain) return LiftingChains.NoSuch(report.Chain);
        if (LiftingCardDesk.KeyFault(report.Key) is { } key) return new IntakeAnswer.Refused([key]);
        if (await db.Examinations.SingleOrDefaultAsync(e => e.KeyOwner == KeyOwner.Sender && e.Key == report.Key, ct)
            is { } known)
            return known.ChainId == chain.Id
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : new IntakeAnswer.Refused([LiftingCardDesk.Used]);
        var card = chain.ToCard();
        List<Refusal> faults = [.. ExaminationCheck.Faults(report, card, time.Today)];
        var appointment = await LiftingChains.AppointmentAsync(db, report.Examiner, card, report.On, time.Zone, ct);
        if (appointment is null)
            faults.Add(new("examiner", $"{report.Examiner.Trim()} had no appointment for this chain on that day. "
                + $"An administrator enters appointments."));
        if (report.FileId is { } file && !await db.LiftingFiles.AnyAsync(f => f.Id == file && f.ChainId == chain.Id, ct))
            faults.Add(new("file", $"There is no such scan of this chain."));
        if (faults.Count > 0) return new IntakeAnswer.Refused(faults);

        var row = Row(report, chain.Id, appointment!.Id, time.Now);
        db.Examinations.Add(row);
        await review.CommitAsync(db, transaction, chain.Id, ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>Withdraws a report that was entered by mistake; it stays on record with the reason.</summary>
    public async Task<IntakeAnswer> WithdrawAsync(long id, string by, string why, CancellationToken ct = default)
    {
        if (why.Trim().Length == 0) return new IntakeAnswer.Refused([new("why", $"Say why in a few words.")]);
        var time = await plantClock.NowAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Examinations.SingleOrDefaultAsync(e => e.Id == id && !e.Withdraws, ct) is not { } wrong)
            return new IntakeAnswer.Refused([new("examination", $"There is no examination {id}.")]);
        if (await db.Examinations.SingleOrDefaultAsync(e => e.CorrectsId == id, ct) is { } done)
            return new IntakeAnswer.Taken(done.Id, AlreadyKnown: true);
        var row = new ExaminationRow
        {
            ChainId = wrong.ChainId,
            Key = $"withdraws examination {id}",
            KeyOwner = KeyOwner.Program,
            On = wrong.On,
            Examiner = wrong.Examiner,
            Result = wrong.Result,
            Points = wrong.Points,
            Remarks = why.Trim(),
            CorrectsId = id,
            Withdraws = true,
            ToldBy = by,
            ReceivedAt = time.Now,
        };
        db.Examinations.Add(row);
        await review.CommitAsync(db, transaction, wrong.ChainId, ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    private static ExaminationRow Row(NewExamination report, int chainId, int appointmentId, DateTimeOffset now) => new()
    {
        ChainId = chainId,
        Key = report.Key,
        On = report.On,
        Examiner = report.Examiner.Trim(),
        ExaminerAddress = report.ExaminerAddress.Trim(),
        AppointmentId = appointmentId,
        Occasion = report.Occasion,
        Result = report.Result,
        Points = [.. report.Points.Where(p => p.Outcome != PointOutcome.NotExamined)],
        Remarks = report.Remarks.Trim(),
        RemedyBy = report.RemedyBy,
        NextOn = report.NextOn,
        ReportNumber = report.ReportNumber.Trim(),
        FileId = report.FileId,
        CounterH = report.CounterH,
        ToldBy = report.ToldBy,
        ReceivedAt = now,
    };
}
