using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Technician.Happenings;

/// <summary>Asks for the chain at which something was done.</summary>
public sealed class DoneQuery(IDbContextFactory<WearDb> databases, ChainReview review, PlantSettings settings, PlantClock clock)
{
    /// <summary>The chain of a name; null when there is none.</summary>
    public async Task<DoneChain?> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.Where(c => c.Name == name).Select(c => (int?)c.Id).FirstOrDefaultAsync(ct) is not { } id) return null;
        if (await review.AssessAsync([id], ct) is not [var reviewed]) return null;
        var early = await db.Forecasts.Where(f => f.ChainId == id && f.IsLatest).Select(f => f.EarlyDate).FirstOrDefaultAsync(ct);
        return new DoneChain(reviewed.Raw, reviewed.Assessment, await settings.CalendarAsync(ct), early, reviewed.Oiling,
            await clock.NowAsync(ct))
        {
            Mates = (await RunningGroups.MatesAsync(db, ct)).GetValueOrDefault(id) ?? [],
        };
    }
}
