using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using WearWatch.Parts;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>The one way in for readings of parts beside the elongation.</summary>
/// <remarks>Each call is one write transaction, committed to disk before it answers; the chain is assessed after that.</remarks>
public sealed class PartDesk(IDbContextFactory<WearDb> database, ChainReview review, TimeProvider clock)
{
    private const int LongestWhy = 200;

    /// <summary>Takes a reading: when it answers Taken, it is committed and the chain has been assessed with it.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewPartReading entry, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var chain = await db.Chains.SingleOrDefaultAsync(c => c.Name == entry.Told.Chain, ct);
        var id = chain?.Id;
        var rows = StandingRows.Standing(await db.PartReadings.AsNoTracking().Where(p => p.ChainId == id).OrderBy(p => p.Id)
            .ToListAsync(ct));
        var read = PartEntryCheck.Read(
            entry, chain?.ToCard(), part => PartTrack.ToldOf([.. rows.Where(r => r.Part == part).Select(r => r.ToReading())]),
            now, out var faults);
        if (read is not { } told) return new IntakeAnswer.Refused(faults);
        if (await db.PartReadings.SingleOrDefaultAsync(p => p.KeyOwner == entry.KeyOwner && p.Key == entry.Key, ct)
            is { } known)
            return known.ChainId == chain!.Id && known.ToReading() == told
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : Refused("key", $"This key came before with something else. Give every entry its own.");
        return await KeepAsync(db, transaction, EntryRows.Row(chain!.Id, told, entry, now));
    }

    /// <summary>
    /// Takes a reading out of use, such as a slip; the old row stays, and another says that it is withdrawn, and why.
    /// </summary>
    public async Task<IntakeAnswer> WithdrawAsync(long id, string by, string why, CancellationToken ct = default)
    {
        if (why.Trim().Length is 0 or > LongestWhy)
            return Refused("why", $"Say why in 1 to {LongestWhy} characters: it stays in the record.");
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.PartReadings.SingleOrDefaultAsync(p => p.Id == id && !p.Withdraws, ct) is not { } row)
            return Refused("part_readings", $"There is no such reading.");
        if (await db.PartReadings.FirstOrDefaultAsync(p => p.CorrectsId == id, ct) is { } known)
            return new IntakeAnswer.Taken(known.Id, AlreadyKnown: true);
        return await KeepAsync(db, transaction, EntryRows.Withdrawal(row, by, clock.GetUtcNow(), why.Trim()));
    }

    private async Task<IntakeAnswer> KeepAsync(WearDb db, IDbContextTransaction transaction, PartReadingRow row)
    {
        db.PartReadings.Add(row);
        await review.CommitAsync(db, transaction, row.ChainId, CancellationToken.None);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    private static IntakeAnswer.Refused Refused(string field, Phrase reason) => new([new Refusal(field, reason)]);
}
