using Microsoft.EntityFrameworkCore;
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
/// Rows of a file are not asked about: nobody stands beside them, and the track weighs each of them all the same.
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
        var neighbours =
            from neighbour in await RawChain.LoadAsync(db, onTheLine, ct)
            let there = Expected(
                neighbour, entry with { Chain = neighbour.Card.Name, Counter = null }, model, calendar, corrects: null)
            where there is not null
            select (neighbour.Card, there.Expected);
        return EntryDoubt.Of(chain.Card, entry, expected.Expected, expected.Alternatives with { OtherChains = [.. neighbours] });
    }

    private static ExpectedReading? Expected(
        RawChain chain, Reading entry, FleetModel? model, ProductionCalendar calendar, long? corrects) => ExpectedReading.Of(
            chain.Card,
            [.. chain.Readings.Take(
                chain.ReadingRows.TakeWhile(r => corrects is null || (r.Id != corrects && r.CorrectsId != corrects)).Count())],
            chain.Events,
            entry,
            model?.PriorFor(chain.CardSeen(calendar)) ?? WearPrior.Broad,
            calendar.Knowing(chain.Ran));
}
