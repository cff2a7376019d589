using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>The constants of wear in use, and their calibration on the plant's own chains.</summary>
public sealed class Calibrations(
    IDbContextFactory<WearDb> database, FleetModels models, PlantSettings plant, TimeProvider clock, ILogger<Calibrations> logger)
{
    private const int ChainsAtOnce = 500;

    /// <summary>The newest fleet model with the newest constants.</summary>
    public async Task<Knowledge> KnowledgeAsync(CancellationToken ct = default)
    {
        var model = await models.CurrentAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        var kept = await db.Calibrations.OrderByDescending(c => c.Id).Select(c => c.Constants).FirstOrDefaultAsync(ct);
        var spread = await db.Spreads.AsNoTracking().OrderByDescending(s => s.Id).FirstOrDefaultAsync(ct);
        return new Knowledge(
            model, kept is null
                ? WearConstants.Default
                : JsonSerializer.Deserialize<WearConstants>(kept, JsonSerializerOptions.Default)!, kept,
            spread?.ToSpread() ?? ForecastSpread.AsMade)
        {
            Oil = await plant.OilTermsAsync(ct),
            Region = (await plant.CurrentAsync(ct)).LawRegion,
        };
    }

    /// <summary>
    /// Calibrates on all chains, run out or not; keeps the constants when those in use are clearly less likely.
    /// </summary>
    /// <returns>Whether there are new constants.</returns>
    public async Task<bool> CalibrateAsync(CancellationToken ct = default)
    {
        var knowledge = await KnowledgeAsync(ct);
        var telling = await TellingAsync(knowledge, ct);
        var outcome = await Task.Run(() => SelfCalibration.Of(telling, knowledge.Constants), ct);
        if (outcome is not CalibrationOutcome.Calibrated { IsWorthwhile: true } own) return false;

        await using var db = await database.CreateDbContextAsync(ct);
        db.Calibrations.Add(new CalibrationRow
        {
            MadeAt = clock.GetUtcNow(),
            Chains = own.Chains,
            LogEvidenceGain = own.LogEvidenceGain,
            Constants = JsonSerializer.Serialize(own.Constants, JsonSerializerOptions.Default),
        });
        await db.SaveChangesAsync(ct);
        logger.Calibrated(own.Chains, own.LogEvidenceGain);
        return true;
    }

    private async Task<List<TellingChain>> TellingAsync(Knowledge knowledge, CancellationToken ct)
    {
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        var telling = new List<TellingChain>();
        foreach (var ids in (await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct)).Chunk(ChainsAtOnce))
            foreach (var raw in await RawChain.LoadAsync(db, ids, ct))
                telling.AddRange(TellingChain.Of(
                    ChainHistory.Take(raw.Card, raw.Readings, raw.Events, calendar.Knowing(raw.Ran)),
                    life => knowledge.PriorFor(DutySeen.Of(raw.Card, life, raw.Readings, raw.Events, calendar))));
        return telling;
    }
}
