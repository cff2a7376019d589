using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Lives;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Books;

/// <summary>Keeps the lives of all chains, and works out again only those of chains of which something was told since.</summary>
/// <remarks>
/// Raw rows are only ever added, so that their highest numbers tell what is new; nobody has to send word, and it holds when
/// another process takes the readings in.
/// </remarks>
public sealed class LifeBook(IDbContextFactory<WearDb> databases, PlantSettings settings, Calibrations calibrations)
    : IDisposable
{
    private const int ChainsAtOnce = 500;

    private readonly SemaphoreSlim turn = new(1);
    private readonly Dictionary<int, BookedChain> chains = [];
    private readonly Dictionary<int, int> revisions = [];
    private long lastReading;
    private long lastEvent;
    private string workedOutBy = "";
    private FleetLives? latest;

    /// <summary>Whether it has been read before, so that to read it again is quick.</summary>
    public bool IsOpen => latest is not null;

    /// <summary>The lives as they stand.</summary>
    public async Task<FleetLives> ReadAsync(CancellationToken ct)
    {
        await turn.WaitAsync(ct);
        try
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            var knowledge = await calibrations.KnowledgeAsync(ct);
            var changed = await ChangedAsync(db, knowledge, ct);
            if (latest is not null && changed.Count == 0) return latest;
            var calendar = await settings.CalendarAsync(ct);
            foreach (var ids in changed.Chunk(ChainsAtOnce))
            {
                var some = await RawChain.LoadAsync(db, ids, ct);
                foreach (var booked in some.AsParallel().Select(raw => Book(raw, calendar, knowledge)))
                    chains[booked.Id] = booked;
            }

            return latest =
                new FleetLives((latest?.Version ?? 0) + 1, [.. chains.Values.OrderBy(c => c.Card.Name, StringComparer.Ordinal)]);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>The lives of one chain.</summary>
    public static BookedChain Book(RawChain raw, ProductionCalendar calendar, Knowledge knowledge)
    {
        var limit = ReplacementLimit.For(raw.Card).Percent;
        var history = ChainHistory.Take(raw.Card, raw.Readings, raw.Events, calendar.Knowing(raw.Ran));
        return new(raw.Id, raw.Card, limit,
            [.. history.Lives.Select((_, number) => BookLife(raw, history, number, limit, Ahead)).OfType<BookedLife>()]);

        WearForecast? Ahead(FittedChain chain)
        {
            if (!chain.FittingKnown || chain.Observations.Count == 0) return null;
            var filter = new WearFilter(knowledge.Constants);
            var prior = knowledge.PriorFor(DutySeen.Of(raw.Card, chain, raw.Readings, raw.Events, calendar));
            return knowledge.Spread.Apply(filter.Forecast(chain, filter.Follow(chain, prior), limit));
        }
    }

    private static BookedLife? BookLife(
        RawChain raw, ChainHistory history, int number, double limit, Func<FittedChain, WearForecast?> ahead)
    {
        var chain = history.Lives[number];
        var next = number + 1 < history.Lives.Count ? history.Lives[number + 1] : null;
        if (Life.Of(chain, limit) is not { } life) return null;
        return new BookedLife(number, life.Failed ? life : life with { Ahead = ahead(chain) }, chain.FittingKnown)
        {
            Lot = chain.Lot,
            FittedAt = chain.FittedAt,
            EndedAt = next is not null ? next.FittedAt : chain.LastReadingIndex is { } last ? raw.Readings[last].TakenAt : null,
            Removed = chain.Removed,
            Broke = next?.FittedAt is { } swapped && raw.Events.Any(e => e.Broke && e.At == swapped),
            HoursRun = chain.RunningHours,
            LastPercent = chain.Observations.Count > 0 ? chain.Observations[^1].ElongationPercent : null,
            LogRate = ChainRate.Of(chain.Observations) is ChainRate.Shown shown ? (shown.LogRate, shown.StandardError) : null,
        };
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task<IReadOnlyCollection<int>> ChangedAsync(WearDb db, Knowledge knowledge, CancellationToken ct)
    {
        var plant = await settings.CurrentAsync(ct);
        var words = $"{plant.TimeZone}|{plant.Shifts}|{plant.Holidays}|{plant.Utilisation}|{knowledge.Version}";
        // Another calendar places undated counters elsewhere, other knowledge foretells otherwise: all begins anew.
        if (words != workedOutBy) revisions.Clear();
        workedOutBy = words;

        var changed = new HashSet<int>();
        foreach (var chain in await db.Chains.AsNoTracking().Select(c => new { c.Id, c.Revision }).ToListAsync(ct))
        {
            if (revisions.TryGetValue(chain.Id, out var known) && known == chain.Revision) continue;
            revisions[chain.Id] = chain.Revision;
            changed.Add(chain.Id);
        }

        var (newestReading, newestEvent) = (
            await db.Readings.MaxAsync(r => (long?)r.Id, ct) ?? 0, await db.Events.MaxAsync(e => (long?)e.Id, ct) ?? 0);
        var read = db.Readings.Where(r => r.Id > lastReading && r.Id <= newestReading).Select(r => r.ChainId);
        var happened = db.Events.Where(e => e.Id > lastEvent && e.Id <= newestEvent).Select(e => e.ChainId);
        changed.UnionWith(await read.Union(happened).ToListAsync(ct));
        (lastReading, lastEvent) = (newestReading, newestEvent);
        return changed;
    }
}
