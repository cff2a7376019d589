using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>The one way in for a single reading or event.</summary>
/// <remarks>Each call is one write transaction, committed to disk before it answers; the chain is assessed after that.</remarks>
public sealed class IntakeDesk(
    IDbContextFactory<WearDb> database, EntryQuestion question, ChainReview review, TimeProvider clock)
{
    /// <summary>Takes a reading: when it answers Taken, it is committed and the chain has been assessed with it.</summary>
    public Task<IntakeAnswer> TakeReadingAsync(NewReading reading, CancellationToken ct = default) =>
        TakeAsync(reading, corrects: null, ct);

    /// <summary>Replaces a reading by another; the old row stays.</summary>
    public Task<IntakeAnswer> CorrectAsync(long readingId, NewReading replacement, CancellationToken ct = default) =>
        TakeAsync(replacement, readingId, ct);

    /// <summary>Takes an event: when it answers Taken, it is committed and the chain has been assessed with it.</summary>
    public async Task<IntakeAnswer> TakeEventAsync(NewEvent happening, CancellationToken ct = default)
    {
        if (EntryCheck.Faults(happening, clock.GetUtcNow()) is { Count: > 0 } faults) return new IntakeAnswer.Refused(faults);
        var told = happening.Told;
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Chains.SingleOrDefaultAsync(c => c.Name == told.Chain, ct) is not { } chain)
            return UnknownChain(told.Chain);
        var row = EntryRows.Row(chain.Id, told, (happening.KeyOwner, happening.Key), happening.ToldBy, clock.GetUtcNow());
        if (await db.Events.SingleOrDefaultAsync(e => e.KeyOwner == happening.KeyOwner && e.Key == happening.Key, ct)
            is { } known)
            return known.Fingerprint == row.Fingerprint ? new IntakeAnswer.Taken(known.Id, AlreadyKnown: true) : KeyIsUsed();
        if (await FaultsAtAsync(db, chain, told, ct) is { Count: > 0 } misfits) return new IntakeAnswer.Refused(misfits);
        if (await question.AskAsync(chain.Id, told, ct) is { } doubt)
        {
            return new IntakeAnswer.Refused([new Refusal("counter_h_before",
                $"{doubt} Correct it or leave it out; if the counter was changed before, record that first.")]);
        }

        if (!happening.Confirmed && await question.AskWhichAsync(chain.Id, told, ct) is { } which)
            return new IntakeAnswer.Refused([new Refusal(Refusal.ToBeConfirmed, which.Question)]);
        db.Events.Add(row);
        await review.CommitAsync(db, transaction, chain.Id, ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>
    /// Takes an event out of use, such as a tap by mistake; the old row stays, and another says that it is withdrawn.
    /// </summary>
    public async Task<IntakeAnswer> WithdrawEventAsync(long eventId, string by, string why, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Events.SingleOrDefaultAsync(e => e.Id == eventId, ct) is not { } told)
            return new IntakeAnswer.Refused([new Refusal("event", $"There is no such event.")]);
        if (await db.Events.FirstOrDefaultAsync(e => e.CorrectsId == eventId && e.Withdraws, ct) is { } known)
            return new IntakeAnswer.Taken(known.Id, AlreadyKnown: true);
        var row = EntryRows.Withdrawal(told, by, clock.GetUtcNow(), why);
        db.Events.Add(row);
        await review.CommitAsync(db, transaction, told.ChainId, ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }

    /// <summary>A person's yes to a waiting reading; to a length that no chain can have, a planner's alone.</summary>
    public Task<IntakeAnswer> ConfirmAsync(long readingId, string by, bool isPlanner, CancellationToken ct = default) =>
        SayAgainAsync(readingId, by, isPlanner ? Word.PlannersYes : Word.Yes, "", ct);

    /// <summary>Takes a reading out of use; the old row stays.</summary>
    public Task<IntakeAnswer> WithdrawAsync(long readingId, string by, string why, CancellationToken ct = default) =>
        SayAgainAsync(readingId, by, Word.Withdrawal, why, ct);

    private async Task<IntakeAnswer> TakeAsync(NewReading reading, long? corrects, CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        if (EntryCheck.Read(reading, out var faults) is not { } told) return new IntakeAnswer.Refused(faults);
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.Chains.SingleOrDefaultAsync(c => c.Name == reading.Chain, ct) is not { } chain)
            return UnknownChain(reading.Chain);
        if (corrects is { } old && !await db.Readings.AnyAsync(r => r.Id == old && r.ChainId == chain.Id, ct))
            return NoSuchReading();

        if (await db.Readings.SingleOrDefaultAsync(r => r.KeyOwner == reading.KeyOwner && r.Key == reading.Key, ct)
            is { } known)
            return known.Fingerprint == Fingerprint.Of(told) ? await AnswerAsync(db, known, ct) : KeyIsUsed();

        var judgement = ReadingJudge.Judge(
            told, await SoFarAsync(db, chain.Id, told.TakenAt, corrects, ct), now, askAboutFalls: true);
        if (judgement is Judgement.Refuse no) return new IntakeAnswer.Refused([new Refusal(no.Column, no.Why)]);
        if (reading.Confirmed && (reading.ByPlanner || judgement is not Judgement.Wait { ForPlanner: true }))
            judgement = new Judgement.Use();
        else if (judgement is Judgement.Use or Judgement.Wait { Column: "counter_h" }
            && await question.AskAsync(chain.Id, told, corrects, ct) is { IsDoubted: true } doubt)
            judgement = new Judgement.Wait(doubt.Column, doubt.Question);
        var row = EntryRows.Row(chain.Id, told, (reading.KeyOwner, reading.Key), judgement, reading.ToldBy, now,
            await NewestAsync(db, corrects, ct));
        db.Readings.Add(row);
        await review.CommitAsync(db, transaction, row.ChainId, ct);
        return Answer(row, alreadyKnown: false);
    }

    /// <summary>What an event tells that cannot be at its chain as it was then.</summary>
    private static async Task<List<Refusal>> FaultsAtAsync(WearDb db, ChainRow chain, ChainEvent told, CancellationToken ct)
    {
        if (told.Kind != ChainEventKind.Shortened) return [];
        var before = (await db.StandingEventsAsync(chain.Id, ct)).Where(e => told.At is null || e.At is null || e.At <= told.At);
        var pitchesOut = Shortening.PitchesOut([.. before.Select(e => e.ToEvent(chain.Name))]);
        return [.. EventFacts.FaultsAt(told, chain.ToCard(), pitchesOut)
            .Select(f => new Refusal(f.Field, f.Reason))];
    }

    private enum Word
    {
        Yes,
        PlannersYes,
        Withdrawal,
    }

    private async Task<IntakeAnswer> SayAgainAsync(long readingId, string by, Word word, string why, CancellationToken ct)
    {
        var withdraws = word == Word.Withdrawal;
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await NewestAsync(db, readingId, ct) is not { } newestId) return NoSuchReading();
        var newest = await db.Readings.SingleAsync(r => r.Id == newestId, ct);
        if (newest.Withdraws == withdraws && newest.Standing == ReadingStanding.Accepted)
            return new IntakeAnswer.Taken(newest.Id, AlreadyKnown: true);
        if (word == Word.Yes && await IsImpossibleAsync(db, newest, ct))
            return ForPlanner();
        var row = EntryRows.Again(
            newest, $"{(withdraws ? "withdraw" : "confirm")}:{newest.Id}", by, clock.GetUtcNow(), withdraws, why);
        db.Readings.Add(row);
        await review.CommitAsync(db, transaction, row.ChainId, ct);
        return Answer(row, alreadyKnown: false);
    }

    /// <summary>Whether no chain can be as a reading says.</summary>
    private static async Task<bool> IsImpossibleAsync(WearDb db, ReadingRow row, CancellationToken ct)
    {
        var pitchMm = await db.Chains.Where(c => c.Id == row.ChainId).Select(c => c.PitchMm).SingleAsync(ct);
        return Gauge.Measure(pitchMm, row.Pitches, row.LengthMm, row.Tool, row.TemperatureC) is GaugeOutcome.Doubted;
    }

    private static IntakeAnswer Answer(ReadingRow row, bool alreadyKnown) => row.Standing == ReadingStanding.Waiting
        ? new IntakeAnswer.Waiting(row.Id, row.WhyWaiting)
        : new IntakeAnswer.Taken(row.Id, alreadyKnown);

    /// <summary>The answer to a reading that was told before: what became of it in the meantime.</summary>
    private static async Task<IntakeAnswer> AnswerAsync(WearDb db, ReadingRow known, CancellationToken ct) =>
        Answer(await NewestAsync(db, known.Id, ct) is { } id
            && id != known.Id ? await db.Readings.SingleAsync(r => r.Id == id, ct) : known, alreadyKnown: true);

    /// <summary>The newest correction of a reading, itself when there is none; null for no reading.</summary>
    private static async Task<long?> NewestAsync(WearDb db, long? readingId, CancellationToken ct)
    {
        if (readingId is not { } id || !await db.Readings.AnyAsync(r => r.Id == id, ct)) return null;
        while (await db.Readings.Where(r => r.CorrectsId == id).Select(r => (long?)r.Id).MaxAsync(ct) is { } newer) id = newer;
        return id;
    }

    /// <summary>The chain before a reading: before the one that is corrected, else before one that is new.</summary>
    private static async Task<ChainSoFar> SoFarAsync(
        WearDb db, int chainId, DateTimeOffset? takenAt, long? corrects, CancellationToken ct)
    {
        var raw = (await RawChain.LoadAsync(db, [chainId], ct)).Single();
        var before = ReadingsAround.Of(raw, takenAt, corrects).Before;
        return new ChainSoFar(
            raw.Card, [.. raw.Events], before.LastOrDefault(r => r.Counter is not null)?.Counter?.Hours,
            before.LastOrDefault(r => r.TakenAt is not null)?.TakenAt);
    }

    private static IntakeAnswer.Refused UnknownChain(string name) =>
        new([new Refusal("chain", $"There is no chain '{name}' in the register.")]);

    private static IntakeAnswer.Refused NoSuchReading() =>
        new([new Refusal("reading", $"There is no such reading of this chain.")]);

    private static IntakeAnswer.Refused ForPlanner() =>
        new([new Refusal("reading", $"No chain runs so: it waits for a planner. Correct it, or ask one.")]);

    private static IntakeAnswer.Refused KeyIsUsed() =>
        new([new Refusal("key", $"This key came before with something else. Give every reading and event its own.")]);
}
