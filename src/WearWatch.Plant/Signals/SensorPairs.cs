using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>The pairs of sensors that count the passing joints of running chains.</summary>
public sealed class SensorPairs(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>Keeps the sensors as they were measured in, from now on.</summary>
    public async Task MeasureInAsync(
        int chainId, double distanceMm, double uncertaintyMm, int? teeth, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        db.SensorPairs.Add(new SensorPairRow
        {
            ChainId = chainId,
            From = clock.GetUtcNow(),
            DistanceMm = distanceMm,
            DistanceUncertaintyMm = uncertaintyMm,
            DriverTeeth = teeth,
            ToldBy = by,
        });
        await db.SaveChangesAsync(ct);
    }
}
