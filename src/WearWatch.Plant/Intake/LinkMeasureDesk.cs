using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>The one way in for measures of round links.</summary>
/// <remarks>Each call is one write transaction, committed to disk before it answers; the chain is assessed after that.</remarks>
public sealed class LinkMeasureDesk(IDbContextFactory<WearDb> database, ChainReview review, TimeProvider clock)
{
    private const int LongestWhy = 200;

    /// <summary>Takes measures: when it answers Taken, they are committed and the chain has been assessed with them.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewLinkMeasures entry, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var chain = await db.Chains.SingleOrDefaultAsync(c => c.Name == entry.Chain, ct);
        if (LinkEntryCheck.Read(entry, chain?.ToCard(), now, out var faults) is not { } told)
            return new IntakeAnswer.Refused(faults);
        if (await db.LinkMeasures.SingleOrDefaultAsync(m => m.KeyOwner == entry.KeyOwner && m.Key == entry.Key, ct)
            is { } known)
            return known.ChainId == chain!.Id && known.ToMeasures() == told
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : Refused("key", $"This key came before with something else. Give every entry its own.");
        return await KeepAsync(db, transaction, EntryRows.Row(chain!.Id, told, entry, chain.LinkOuterEdges, now));
    }

    /// <summary>
    /// Puts right measures that were told wrongly: the old row stays, and another takes its place with the reason.
    /// </summary>
    /// <param name="id">The row that stands and is wrong.</param>
    /// <param name="replacement">What it ought to have been.</param>
    /// <param name="why">Why, for the record.</param>
    /// <param name="ct">Gives up.</param>
    public async Task<IntakeAnswer> CorrectAsync(long id, NewLinkMeasures replacement, string why, CancellationToken ct = default)
    {
        if (why.Trim().Length is 0 or > LongestWhy)
            return Refused("why", $"Say why in 1 to {LongestWhy} characters: it stays in the record.");
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.LinkMeasures.SingleOrDefaultAsync(m => m.Id == id && !m.Withdraws, ct) is not { } wrong)
            return Refused("link_measures", $"There are no such measures.");
        var chain = await db.Chains.SingleAsync(c => c.Id == wrong.ChainId, ct);
        if (LinkEntryCheck.Read(replacement with { Chain = chain.Name }, chain.ToCard(), now, out var faults) is not { } told)
            return new IntakeAnswer.Refused(faults);
        if (await db.LinkMeasures.SingleOrDefaultAsync(
            m => m.KeyOwner == replacement.KeyOwner && m.Key == replacement.Key, ct) is { } known)
            return known.CorrectsId == id && known.ToMeasures() == told
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : Refused("key", $"This key came before with something else. Give every entry its own.");
        if (await db.LinkMeasures.AnyAsync(m => m.CorrectsId == id, ct))
            return Refused("link_measures", $"They were corrected or withdrawn already: take those that stand.");
        return await KeepAsync(
            db, transaction,
            EntryRows.Row(chain.Id, told, replacement, chain.LinkOuterEdges, now, corrects: id, why: why.Trim()));
    }

    /// <summary>
    /// Takes measures out of use, such as a slip; the old row stays, and another says that it is withdrawn, and why.
    /// </summary>
    public async Task<IntakeAnswer> WithdrawAsync(long id, string by, string why, CancellationToken ct = default)
    {
        if (why.Trim().Length is 0 or > LongestWhy)
            return Refused("why", $"Say why in 1 to {LongestWhy} characters: it stays in the record.");
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.LinkMeasures.SingleOrDefaultAsync(m => m.Id == id && !m.Withdraws, ct) is not { } row)
            return Refused("link_measures", $"There are no such measures.");
        if (await db.LinkMeasures.FirstOrDefaultAsync(m => m.CorrectsId == id, ct) is { } known)
            return new IntakeAnswer.Taken(known.Id, AlreadyKnown: true);
        return await KeepAsync(db, transaction, Withdrawal(row, by, why.Trim(), clock.GetUtcNow()));
    }

    private async Task<IntakeAnswer> KeepAsync(
        WearDb db, Microsoft.EntityFrameworkCore.Storage.IDbContextTransaction transaction, LinkMeasureRow row)
    {
        db.LinkMeasures.Add(row);
        await review.CommitAsync(db, transaction, row.ChainId, CancellationToken.None);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    private static LinkMeasureRow Withdrawal(LinkMeasureRow row, string by, string why, DateTimeOffset now) => new()
    {
        ChainId = row.ChainId,
        Key = FormattableString.Invariant($"withdraw-links:{row.Id}"),
        KeyOwner = KeyOwner.Program,
        TakenAt = row.TakenAt,
        CounterH = row.CounterH,
        Place = row.Place,
        Tool = row.Tool,
        OneLinkMm = row.OneLinkMm,
        SeveralLinksMm = row.SeveralLinksMm,
        Links = row.Links,
        OuterEdges = row.OuterEdges,
        D1Mm = row.D1Mm,
        D2Mm = row.D2Mm,
        Written = row.Written,
        CorrectsId = row.Id,
        Withdraws = true,
        Note = why,
        ToldBy = by,
        ReceivedAt = now,
    };

    private static IntakeAnswer.Refused Refused(string field, Phrase reason) => new([new Refusal(field, reason)]);
}
