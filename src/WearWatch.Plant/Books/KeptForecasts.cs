using Microsoft.EntityFrameworkCore;
using WearWatch.Lives;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Books;

/// <summary>Scores the forecasts that were kept when they were made, once the limit of their chain has been reached.</summary>
/// <remarks>
/// A life that has ended is scored once; another one only when its hours turn out otherwise through a correction.
/// </remarks>
public sealed class KeptForecasts(IDbContextFactory<WearDb> databases) : IDisposable
{
    private const int LivesAtOnce = 200;
    private const double SameLimit = 1e-6;

    private readonly SemaphoreSlim turn = new(1);
    private readonly Dictionary<(int Chain, int Life), (double Hours, IReadOnlyList<RecordedForecast> Scores)> scored = [];

    /// <summary>The scored forecasts of all lives that have ended at their limit.</summary>
    public async Task<IReadOnlyList<RecordedForecast>> ReadAsync(FleetLives fleet, CancellationToken ct)
    {
        await turn.WaitAsync(ct);
        try
        {
            var ended = fleet.Chains
                .SelectMany(c => c.Lives.Where(l => l.Life.Failed && l.FittingKnown).Select(l => (Chain: c, Life: l))).ToList();
            var unknown = ended.Where(e => !scored.TryGetValue((e.Chain.Id, e.Life.Number), out var s)
                || s.Hours != e.Life.Life.Hours).ToList();
            await using var db = await databases.CreateDbContextAsync(ct);
            foreach (var some in unknown.Chunk(LivesAtOnce)) await ScoreAsync(db, some, ct);
            return [.. ended.SelectMany(e => scored[(e.Chain.Id, e.Life.Number)].Scores)];
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>A forecast that stood at a share of a life, scored.</summary>
    public static RecordedForecast Score(BookedChain chain, BookedLife life, double share, ForecastRow standing) => new(
        new ScoredForecast
        {
            Forecast = standing.ToForecast(),
            LastReadingHours = standing.HoursAtLastReading,
            StandingHours = share * life.Life.Hours,
            LifeHours = life.Life.Hours,
        },
        share, standing.ModelVersion, chain.CardOf(life))
    {
        FittedAt = life.FittedAt,
        EndedAt = life.EndedAt,
        Spread = standing.Spread,
    };

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task ScoreAsync(WearDb db, (BookedChain Chain, BookedLife Life)[] lives, CancellationToken ct)
    {
        var ids = lives.Select(l => l.Chain.Id).Distinct().ToList();
        // A row is long and a chain has one for every day: first which of them stood, then those alone.
        var brief = (await db.Forecasts.Where(f => ids.Contains(f.ChainId))
                .Select(f => new { f.Id, f.ChainId, f.Life, f.HoursNow, f.LimitPct }).ToListAsync(ct))
            .ToLookup(f => (f.ChainId, f.Life));
        // A forecast of another limit answers another question.
        long? Standing((BookedChain Chain, BookedLife Life) life, double share) => brief[(life.Chain.Id, life.Life.Number)]
            .Where(f => Math.Abs(f.LimitPct - life.Chain.LimitPercent) < SameLimit && f.HoursNow <= share * life.Life.Life.Hours)
            .Max(f => (long?)f.Id);
        var standing = lives.SelectMany(l =>
            RecordedForecast.Shares.Select(share => (Life: l, Share: share, Id: Standing(l, share)))).ToList();
        var needed = standing.Select(s => s.Id).OfType<long>().Distinct().ToList();
        var rows = await db.Forecasts.AsNoTracking().Where(f => needed.Contains(f.Id)).ToDictionaryAsync(f => f.Id, ct);
        foreach (var ((chain, life), its) in standing.GroupBy(s => s.Life).Select(g => (g.Key, g)))
        {
            scored[(chain.Id, life.Number)] =
                (life.Life.Hours,
                    [.. its.Where(s => s.Id is not null).Select(s => Score(chain, life, s.Share, rows[s.Id!.Value]))]);
        }
    }
}
