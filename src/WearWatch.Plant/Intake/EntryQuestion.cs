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
/// Of the rows of a file the counters are asked about (<see cref="ChainSoFar"/>), since no track can weigh hours that did not
/// pass, and the lengths (<see cref="ReadingsTaking"/>).
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
    /// <param name="corrects">
    /// The reading that it is to replace: it does not count, and it is weighed amid those before and after that one.
    /// </param>
    /// <param name="ct">Stops it.</param>
    public async Task<EntryDoubt?> AskAsync(int chainId, Reading entry, long? corrects = null, CancellationToken ct = default)
    {
        var model = await models.CurrentAsync(ct);
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if ((await RawChain.LoadAsync(db, [chainId], ct)) is not [var chain]) return null;
        if (Gauge.Measure(chain.Card.PitchMm, entry.Pitches, entry.LengthMm, entry.Tool,
            entry.TemperatureC) is GaugeOutcome.Refused) return null;
        var around = ReadingsAround.Of(chain, entry.TakenAt, corrects);
        var known = Known(chain, model, calendar) with
        {
            Readings = around.Before,
            After = [.. around.After.Take(KnownChain.ReadingsAfter)],
        };
        // What came after says nothing where it does not go on from what came before.
        if (known.After.Count > 0 && known.Weigh(entry) is null) known = known with { After = [] };
        return known.Weigh(entry) is { IsWorthTheNeighbours: false } usual
            ? usual
            : known.Weigh(entry, await NeighboursAsync(db, chain, model, calendar, ct));
    }

    /// <summary>
    /// What does not fit about an event's counter, with what it may have been; null when it fits or nothing can be said.
    /// </summary>
    public async Task<Phrase?> AskAsync(int chainId, ChainEvent happening, CancellationToken ct = default)
    {
        if (happening is { CounterBefore: null, CounterAfter: null }) return null;
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if ((await RawChain.LoadAsync(db, [chainId], ct)) is not [var chain]) return null;
        var known = Known(chain, model: null, calendar);
        if (known.Weigh(happening) is not { IsUnusual: true }) return null;
        var doubt = known.Weigh(happening, await NeighboursAsync(db, chain, model: null, calendar, ct));
        return doubt is { IsDoubted: true } ? doubt.Question : null;
    }

    /// <summary>Whether a replacement is of the chain that was told, where that is hardly worn; null for no doubt.</summary>
    public async Task<ReplacementDoubt?> AskWhichAsync(int chainId, ChainEvent happening, CancellationToken ct = default)
    {
        if (happening is not { Kind: ChainEventKind.Replacement, Broke: false }) return null;
        var model = await models.CurrentAsync(ct);
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if ((await RawChain.LoadAsync(db, [chainId], ct)) is not [var chain]) return null;
        return ReplacementDoubt.Of(
            Known(chain, model, calendar), happening, await NeighboursAsync(db, chain, model, calendar, ct));
    }

    /// <summary>Only an entry that is unusual is worth the look at all neighbours on the line.</summary>
    private static async Task<IReadOnlyList<KnownChain>> NeighboursAsync(
        WearDb db, RawChain chain, FleetModel? model, ProductionCalendar calendar, CancellationToken ct)
    {
        if (chain.Card.Line.Length == 0) return [];
        var onTheLine = await db.Chains.Where(c => c.Line == chain.Card.Line && c.Id != chain.Id).Select(c => c.Id)
            .ToListAsync(ct);
        return [.. (await RawChain.LoadAsync(db, onTheLine, ct)).Select(n => Known(n, model, calendar))];
    }

    private static KnownChain Known(RawChain chain, FleetModel? model, ProductionCalendar calendar) => new(
        chain.Card, chain.Readings, chain.Events, model?.PriorFor(chain.CardSeen(calendar)) ?? WearPrior.Broad,
        calendar.Knowing(chain.Ran));
}
