using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Plant.Tracking;

/// <summary>
/// Keeps the history of forecasts small, so that ten years of a thousand chains fit on any disk: all of the last 100 days, of the
/// two years before one a week, of what is older one a month. The newest of a chain always stays.
/// </summary>
/// <remarks>
/// Of each stretch its first forecast stays, whatever was thinned before, so thinning twice changes nothing. All can be made anew
/// from the readings. (The stretches are common practice: a month is short beside a chain's life.)
/// </remarks>
public sealed class ForecastThinning(IDbContextFactory<WearDb> database, TimeProvider clock)
{
    private const int RowsAtOnce = 500;
    private static readonly TimeSpan allOf = TimeSpan.FromDays(100);
    private static readonly TimeSpan weeklyOf = TimeSpan.FromDays(2 * 365);
    private static readonly TimeSpan week = TimeSpan.FromDays(7);
    private static readonly TimeSpan month = TimeSpan.FromDays(28);

    /// <summary>Thins once.</summary>
    /// <returns>How many forecasts went.</returns>
    public async Task<int> RunOnceAsync(CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        var gone = await ThinAsync(db, now - weeklyOf, now - allOf, week, ct);
        return gone + await ThinAsync(db, DateTimeOffset.MinValue, now - weeklyOf, month, ct);
    }

    private static async Task<int> ThinAsync(
        WearDb db, DateTimeOffset from, DateTimeOffset until, TimeSpan stretch, CancellationToken ct)
    {
        var gone = 0;
        foreach (var chain in await db.Chains.Select(c => c.Id).ToListAsync(ct))
        {
            var rows = await db.Forecasts.Where(f => f.ChainId == chain && !f.IsLatest && f.MadeAt >= from && f.MadeAt < until)
                .OrderBy(f => f.Id).Select(f => new { f.Id, f.MadeAt }).ToListAsync(ct);
            var spare = rows.GroupBy(r => r.MadeAt.UtcTicks / stretch.Ticks).SelectMany(g => g.Skip(1).Select(r => r.Id));
            foreach (var some in spare.Chunk(RowsAtOnce))
                gone += await db.Forecasts.Where(f => EF.Parameter(some).Contains(f.Id)).ExecuteDeleteAsync(ct);
        }

        return gone;
    }
}
