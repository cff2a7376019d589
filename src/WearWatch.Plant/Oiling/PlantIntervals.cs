using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lubrication;
using WearWatch.Lubrication.Intervals;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Plant.Oiling;

/// <summary>
/// What the plant's history says of oiling intervals, by class of chain. Made once for what has been told so far.
/// </summary>
public sealed class PlantIntervals(
    IDbContextFactory<WearDb> database, PlantSettings plant, Calibrations calibrations) : IDisposable
{
    private const int Seed = 20_260_101;
    private const int ChainsAtOnce = 200;

    private readonly SemaphoreSlim turn = new(1);
    private ((long Reading, long Event, OilTerms Terms) For, IReadOnlyList<ClassInterval> Made)? kept;

    /// <summary>All chains together first, then each family with a chain in it.</summary>
    public async Task<IReadOnlyList<ClassInterval>> AskAsync(CancellationToken ct = default)
    {
        await turn.WaitAsync(ct);
        try
        {
            var terms = await plant.OilTermsAsync(ct);
            await using var db = await database.CreateDbContextAsync(ct);
            var told = (await db.Readings.MaxAsync(r => (long?)r.Id, ct) ?? 0, await db.Events.MaxAsync(e => (long?)e.Id, ct)
                ?? 0, terms);
            if (kept is { } before && before.For == told) return before.Made;
            var lives = await LivesAsync(db, ct);
            var wear = (await calibrations.KnowledgeAsync(ct)).Constants;
            var made = await Task.Run(() => Make(lives, terms, wear), ct);
            kept = (told, made);
            return made;
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task<List<(ChainCard Card, OiledLife Life)>> LivesAsync(WearDb db, CancellationToken ct)
    {
        var calendar = await plant.CalendarAsync(ct);
        var lives = new List<(ChainCard, OiledLife)>();
        foreach (var ids in (await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct)).Chunk(ChainsAtOnce))
            foreach (var raw in (await RawChain.LoadAsync(db, ids, ct)).Where(r => r.Events.Any(e => e.BroughtOil)))
                lives.AddRange(
                    from life in ChainHistory.Take(raw.Card, raw.Readings, raw.Events, calendar).Lives
                    select (raw.Card, new OiledLife(life.Observations, OilAges.Of(life, raw.Readings, raw.Events, calendar))));
        return lives;
    }

    private static IReadOnlyList<ClassInterval> Make(
        List<(ChainCard Card, OiledLife Life)> lives, OilTerms terms, WearConstants wear) =>
    [
        Learn(null, lives, terms, wear),
        .. lives.GroupBy(l => l.Card.Family).OrderBy(g => g.Key.Place).Select(g => Learn(g.Key, [.. g], terms, wear)),
    ];

    private static ClassInterval Learn(
        ChainFamily? family, List<(ChainCard Card, OiledLife Life)> lives, OilTerms terms, WearConstants wear)
    {
        var limit = lives.Count == 0 ? 3 : Median.Of([.. lives.Select(l => ReplacementLimit.For(l.Card).Percent)]);
        var costs = terms is { CostOfOiling: { } ofOiling, CostOfChain: { } ofChain }
            ? new OilingCosts(ofOiling, ofChain, limit)
            : null;
        return new ClassInterval(family, IntervalLearning.Of([.. lives.Select(l => l.Life)], costs, wear, Seed));
    }
}
