using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>The one way in for what the register says of a lifting chain, and for its scanned papers.</summary>
public sealed class LiftingCardDesk(
    IDbContextFactory<WearDb> database, ChainReview review, PlantSettings settings, PlantClock plantClock)
{
    private const int LongestKey = 200;

    /// <summary>Takes an entry; the older ones stay.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewLiftingCard entry, CancellationToken ct = default)
    {
        var time = await plantClock.NowAsync(ct);
        var card = entry.Card;
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await LiftingChains.FindAsync(db, entry.Chain, ct) is not { } chain) return LiftingChains.NoSuch(entry.Chain);
        if (KeyFault(card.Key) is { } key) return Refused(key);
        if (await db.LiftingCards.SingleOrDefaultAsync(c => c.Key == card.Key, ct) is { } known)
            return known.ChainId == chain.Id ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true) : Refused(Used);
        var region = (await settings.CurrentAsync(ct)).LawRegion;
        List<Refusal> faults = [.. LiftingCardCheck.Faults(card, region, time.Today)];
        var newest = await db.LiftingCards.Where(c => c.ChainId == chain.Id).MaxAsync(c => (long?)c.Id, ct);
        if (newest != entry.Basis)
            faults.Add(new("basis", $"Somebody else changed the entry in the meantime: read it again, then change it."));
        if (newest is not null && card.Why.Trim().Length == 0) faults.Add(new("why", $"Say why in a few words."));
        (string, long?)[] scans = [("certificate_file", card.CertificateFileId), ("written_scheme", card.WrittenSchemeFileId)];
        foreach (var (field, id) in scans)
            if (id is not null && !await db.LiftingFiles.AnyAsync(f => f.Id == id && f.ChainId == chain.Id, ct))
                faults.Add(new(field, $"There is no such scan of this chain."));
        if (faults.Count > 0) return new IntakeAnswer.Refused(faults);

        var mates = await LiftingChains.MatesAsync(db, chain.Id, ct);
        var row = Stamped(card, chain, await LiftingChains.FittedAtAsync(db, chain, ct), time.Now);
        db.LiftingCards.Add(row);
        await review.CommitAsync(db, transaction, chain.Id, ct);
        // What one of a set means for the others follows at once, also for a set that it has left.
        mates = [.. mates.Union(await LiftingChains.MatesAsync(db, chain.Id, CancellationToken.None))];
        await review.ReviewAsync(mates, null, CancellationToken.None);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>Takes a scanned paper. An entry or a report names it afterwards.</summary>
    public async Task<IntakeAnswer> TakeAsync(NewLiftingFile file, CancellationToken ct = default)
    {
        var (content, type, reason) = ScannedPaper.Read(file.Content);
        if (content is null) return Refused(new("file", reason!));
        if (KeyFault(file.Key) is { } key) return Refused(key);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await LiftingChains.FindAsync(db, file.Chain, ct) is not { } chain) return LiftingChains.NoSuch(file.Chain);
        if (await db.LiftingFiles.SingleOrDefaultAsync(f => f.Key == file.Key, ct) is { } known)
            return known.ChainId == chain.Id && known.Content.AsSpan().SequenceEqual(content)
                ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true)
                : Refused(Used);
        var row = new LiftingFileRow
        {
            ChainId = chain.Id,
            Key = file.Key,
            Kind = file.Kind,
            Name = Path.GetFileName(file.Name.Replace('\\', '/')) is { Length: > 0 and <= LongestKey } name ? name : "scan",
            ContentType = type,
            Content = content,
            ToldBy = file.ToldBy,
            ReceivedAt = (await plantClock.NowAsync(ct)).Now,
        };
        db.LiftingFiles.Add(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>The entry with what is not the writer's to say.</summary>
    private static LiftingCardRow Stamped(
        LiftingCardRow card, ChainRow chain, DateTimeOffset? fittedAt, DateTimeOffset now) => new()
        {
            ChainId = chain.Id,
            Key = card.Key,
            At = now,
            By = card.By,
            Why = card.Why.Trim(),
            FittedAt = fittedAt,
            Use = card.Use,
            WorkingLoadKg = card.WorkingLoadKg,
            WorkingLoadOf = card.WorkingLoadOf.Trim(),
            CertificateNumber = card.CertificateNumber.Trim(),
            CertificateOn = card.CertificateOn,
            CertificateFileId = card.CertificateFileId,
            ProofTestOn = card.ProofTestOn,
            ProofLoadKg = card.ProofLoadKg,
            ProofTestNumber = card.ProofTestNumber.Trim(),
            Maker = card.Maker.Trim(),
            Standard = card.Standard.Trim(),
            Grade = card.Grade.Trim(),
            TraceMark = card.TraceMark.Trim(),
            ChainSet = card.ChainSet.Trim(),
            Region = card.Region,
            LiftsPersons = card.LiftsPersons,
            HeavyUse = card.HeavyUse,
            LiftsPerWeek = card.LiftsPerWeek,
            ExaminationMonths = card.ExaminationMonths,
            WrittenScheme = card.WrittenScheme.Trim(),
            WrittenSchemeFileId = card.WrittenSchemeFileId,
        };

    internal static Refusal? KeyFault(string key) => string.IsNullOrWhiteSpace(key) || key.Length > LongestKey
        ? new("key", $"A key of 1 to {LongestKey} characters distinguishes this entry from others.")
        : null;

    internal static Refusal Used { get; } = new("key", $"This key was used for something else.");

    private static IntakeAnswer.Refused Refused(Refusal fault) => new([fault]);
}
