using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Learning;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Intake;

/// <summary>
/// Asks of a single entry whether it fits what its chain's track expects, and what may have slipped if it does not.
/// </summary>
/// <remarks>
/// Lengths in rows of a file are not asked about: nobody stands beside them, and the track weighs each of them all the same.
/// Their counters are (<see cref="ChainSoFar"/>): no track can weigh hours that did not pass.
/// </remarks>
public sealed class EntryQuestion(IDbContextFactory<WearDb> database, FleetModels models, PlantSettings plant)
{
    /// <summary>Weighs an entry as it was typed; null when its fields cannot be read or nothing is expected of it yet.</summary>
    public async Task<EntryDoubt?> AskAsync(
        int chainId, NewReading entry, long? corrects = null, CancellationToken ct = default) =>
        EntryCheck.Read(entry, out _) is { } reading ? await AskAsync(chainId, reading, corrects, ct) : null;

    /// <summary>Weighs an entry; null when nothing is expected of it yet.</summary>
    /// <param name="chainId">The chain.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="corrects">The reading that it is to replace: it and what was read after it do not count.</param>
    /// <param name="ct">Stops it.</param>
    public async Task<EntryDoubt?> AskAsync(int chainId, Reading entry, long? corrects = null, CancellationToken ct = default)
    {
        var model = await models.CurrentAsync(ct);
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if ((await RawChain.LoadAsync(db, [chainId], ct)) is not [var chain]) return null;
        if (Gauge.Measure(chain.Card.PitchMm, entry.Pitches, entry.LengthMm, entry.Tool,
            entry.TemperatureC) is GaugeOutcome.Refused) return null;
        if (Expected(chain, entry, model, calendar, corrects) is not { } expected) return null;

        var doubt = EntryDoubt.Of(chain.Card, entry, expected.Expected, expected.Alternatives);
        if (!doubt.IsDoubted || chain.Card.Line.Length == 0) return doubt;

        // Only an entry that does not fit is worth the look at all neighbours on the line.
        var onTheLine = await db.Chains.Where(c => c.Line == chain.Card.Line && c.Id != chainId).Select(c => c.Id)
            .ToListAsync(ct);
        var neighbours = await RawChain.LoadAsync(db, onTheLine, ct);
        var others =
            from neighbour in neighbours
            let there = Expected(
                neighbour, entry with { Chain = neighbour.Card.Name, Counter = null }, model, calendar, corrects: null)
            where there is not null
            select (neighbour.Card, there.Expected);
        var again = Expected(chain, entry, model, calendar, corrects, [.. neighbours.Select(n => new CounterClock(
            n.Card, n.Readings, n.Events, calendar.Knowing(n.Ran)))]) ?? expected;
        return EntryDoubt.Of(chain.Card, entry, again.Expected, again.Alternatives with { OtherChains = [.. others] });
    }

    /// <summary>
    /// What does not fit about an event's counter, with what it may have been; null when it fits or nothing can be said.
    /// </summary>
    public async Task<string?> AskAsync(int chainId, ChainEvent happening, CancellationToken ct = default)
    {
        // Only a fitting and a change of the counter move the hours of the readings after it.
        if (happening is not
            {
                Kind: ChainEventKind.Replacement or ChainEventKind.MeterReset, CounterBefore: { } counter, At: { } at,
            }) return null;
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if ((await RawChain.LoadAsync(db, [chainId], ct)) is not [var chain]) return null;
        // Only the hours matter: the entry stands for what the counter showed at that moment.
        var entry = new Reading
        {
            Chain = chain.Card.Name,
            TakenAt = at,
            Counter = counter,
            Tool = Tool.Tape,
            Pitches = 1,
            LengthMm = chain.Card.PitchMm,
        };
        var clock = new CounterClock(chain.Card, chain.Readings, chain.Events, calendar.Knowing(chain.Ran));
        return CounterEvidence.Of(entry, clock) is { IsDoubted: true } doubt ? doubt.Question : null;
    }

    private static ExpectedReading? Expected(
        RawChain chain, Reading entry, FleetModel? model, ProductionCalendar calendar, long? corrects,
        IReadOnlyList<CounterClock>? onTheLine = null) => ExpectedReading.Of(
            chain.Card,
            [.. chain.Readings.Take(
                chain.ReadingRows.TakeWhile(r => corrects is null || (r.Id != corrects && r.CorrectsId != corrects)).Count())],
            chain.Events,
            entry,
            model?.PriorFor(chain.CardSeen(calendar)) ?? WearPrior.Broad,
            calendar.Knowing(chain.Ran),
            onTheLine);
}
