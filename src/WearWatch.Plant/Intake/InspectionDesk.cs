using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Inspections;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>
/// The one way in for looks and their photos. A look is an event, too: it stands among what happened to the chain.
/// </summary>
public sealed class InspectionDesk(IDbContextFactory<WearDb> database, ChainReview review, TimeProvider clock)
{
    private const int LongestNote = 500;

    /// <summary>Takes a look: when it answers Taken, it is committed and the chain's notices say what was found.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewInspection look, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        var takenAt = look.TakenAt ?? now;
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var chain = await db.Chains.SingleOrDefaultAsync(c => c.Name == look.Chain, ct);
        if (Faults(look, chain, now) is { Count: > 0 } faults) return new IntakeAnswer.Refused(faults);
        if (await db.Looks.SingleOrDefaultAsync(l => l.Key == look.Key, ct) is { } known)
            return IsSame(known, look, chain!.Id) ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true) : KeyIsUsed();
        if (await db.Events.AnyAsync(e => e.KeyOwner == KeyOwner.Sender && e.Key == look.Key, ct)) return KeyIsUsed();

        var row = new InspectionRow
        {
            ChainId = chain!.Id,
            Key = look.Key,
            TakenAt = takenAt,
            Findings = look.Findings,
            ToldBy = look.ToldBy,
            ReceivedAt = now,
        };
        db.Looks.Add(row);
        db.Events.Add(EntryRows.Row(chain.Id, ToEvent(look, takenAt), (KeyOwner.Sender, look.Key), look.ToldBy, now));
        await review.CommitAsync(db, transaction, chain.Id, ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>Takes a photo of a look that has been taken.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewPhoto photo, CancellationToken ct = default)
    {
        var (jpeg, reason) = JpegPhoto.Read(photo.File);
        if (jpeg is null) return Refused("photo", reason);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Looks.SingleOrDefaultAsync(l => l.Key == photo.LookKey, ct) is not { } look)
            return Refused("inspection", $"There is no such inspection.");
        if (!look.Findings.Any(f => f.Point == photo.Point)) return Refused("point", $"It says nothing of this point.");
        if (await db.Photos.SingleOrDefaultAsync(p => p.Key == photo.Key, ct) is { } known)
            return known.Jpeg.AsSpan().SequenceEqual(jpeg) ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true) : KeyIsUsed();
        var row = new PhotoRow
        {
            ChainId = look.ChainId,
            Key = photo.Key,
            LookKey = photo.LookKey,
            Point = photo.Point,
            Jpeg = jpeg,
            ToldBy = photo.ToldBy,
            ReceivedAt = clock.GetUtcNow(),
        };
        db.Photos.Add(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    private static List<Refusal> Faults(NewInspection look, ChainRow? chain, DateTimeOffset now)
    {
        var inspection = new NewEvent
        {
            Key = look.Key,
            Told = new ChainEvent
            {
                Chain = look.Chain,
                Kind = ChainEventKind.Inspection,
                At = look.TakenAt ?? now,
                CounterBefore = RowFields.Hours(look.CounterH),
                CounterAfter = RowFields.Hours(look.CounterH),
            },
            ToldBy = look.ToldBy,
        };
        var faults = EntryCheck.Faults(inspection, now);
        if (chain is null) faults.Add(new("chain", $"No chain is called '{look.Chain}'."));
        if (look.Findings.Count == 0) faults.Add(new("findings", $"Say of at least one point whether it is in order."));
        if (look.Findings.DistinctBy(f => f.Point).Count() < look.Findings.Count)
            faults.Add(new("findings", $"A point stands there twice."));
        if (look.Findings.Any(f => f.Note.Length > LongestNote))
            faults.Add(new("findings", $"A note is longer than {LongestNote} characters."));
        foreach (var finding in look.Findings
            .Where(f => chain is not null && chain.Family.CheckPoint(f.Point, chain.HoldsLoad) is null))
            faults.Add(new("findings", $"{finding.Point} is not inspected on this kind of chain."));
        return faults;
    }

    private static ChainEvent ToEvent(NewInspection look, DateTimeOffset takenAt) => new()
    {
        Chain = look.Chain,
        Kind = ChainEventKind.Inspection,
        At = takenAt,
        CounterBefore = look.CounterH is { } before ? new RunningHours(before) : null,
        CounterAfter = look.CounterH is { } after ? new RunningHours(after) : null,
        Note = look.Findings.Count(f => f.Found) is > 0 and var found
            ? $"{found} of {look.Findings.Count} points found"
            : "in order",
    };

    private static bool IsSame(InspectionRow known, NewInspection look, int chainId) =>
        known.ChainId == chainId && (look.TakenAt is null || known.TakenAt == look.TakenAt)
            && known.Findings.SequenceEqual(look.Findings);

    private static IntakeAnswer.Refused KeyIsUsed() => Refused("key", $"This key was used for something else.");

    private static IntakeAnswer.Refused Refused(string field, Phrase reason) => new([new Refusal(field, reason)]);
}
