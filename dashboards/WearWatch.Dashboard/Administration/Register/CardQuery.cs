using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>Asks for a chain's card and its changes.</summary>
public sealed class CardQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>The plant's time, for a card that is new.</summary>
    public Task<PlantTime> NowAsync(CancellationToken ct) => clock.NowAsync(ct);

    /// <summary>The card of a name with its newest changes; null when no chain has the name.</summary>
    public async Task<RegisteredCard?> AskAsync(string name, int changesShown, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == name, ct) is not { } row) return null;
        var changes = db.CardChanges.AsNoTracking().Where(c => c.ChainId == row.Id);
        return new RegisteredCard(
            row, await changes.OrderByDescending(c => c.Id).Take(changesShown).ToListAsync(ct), await changes.CountAsync(ct),
            await db.Forecasts.Where(f => f.ChainId == row.Id && f.IsLatest).Select(f => f.EarlyDate).FirstOrDefaultAsync(ct),
            await clock.NowAsync(ct));
    }
}
