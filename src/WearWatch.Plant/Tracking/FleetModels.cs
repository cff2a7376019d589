using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>The fleet model in use, and its training.</summary>
public sealed class FleetModels(
    IDbContextFactory<WearDb> database, PlantSettings plant, TimeProvider clock, ILogger<FleetModels> logger)
{
    /// <summary>Chance in training is drawn from this, so that the same histories give the same model.</summary>
    public const int Seed = 20_260_101;

    private const int ChainsAtOnce = 500;

    private (int Id, FleetModel? Model)? loaded;

    /// <summary>
    /// The newest model; null while there is none, or it was saved by another version of this program: then the next night trains
    /// one.
    /// </summary>
    public async ValueTask<FleetModel?> CurrentAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var newest = await db.FleetModels.OrderByDescending(m => m.Id).Select(m => (int?)m.Id).FirstOrDefaultAsync(ct);
        if (newest is not { } id) return null;
        if (loaded is { } now && now.Id == id) return now.Model;
        var bytes = await db.FleetModels.Where(m => m.Id == id).Select(m => m.Model).SingleAsync(ct);
        loaded = (id, Read(bytes));
        return loaded.Value.Model;
    }

    private FleetModel? Read(byte[] bytes)
    {
        try
        {
            using var stream = new MemoryStream(bytes);
            return FleetModel.Load(stream);
        }
        catch (InvalidDataException error)
        {
            logger.FleetModelUnreadable(error);
            return null;
        }
    }

    /// <summary>When the newest model was trained; null while there is none.</summary>
    public async Task<DateTimeOffset?> TrainedAtAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.FleetModels.OrderByDescending(m => m.Id).Select(m => (DateTimeOffset?)m.TrainedAt)
            .FirstOrDefaultAsync(ct);
    }

    /// <summary>
    /// Trains a model on all stored histories and keeps it when it differs from the newest; false when there is nothing new.
    /// </summary>
    public async Task<bool> TrainAsync(CancellationToken ct = default)
    {
        var chains = await HistoriesAsync(ct);
        switch (await Task.Run(() => FleetTraining.Train(chains, Seed), ct))
        {
            case FleetTrainingOutcome.Trained trained:
                return await KeepAsync(trained, ct);
            case FleetTrainingOutcome.TooFewChains few:
                logger.TooFewChainsToLearn(few.Have, few.Need);
                return false;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private async Task<List<FleetChain>> HistoriesAsync(CancellationToken ct)
    {
        var calendar = await plant.CalendarAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        var chains = new List<FleetChain>();
        foreach (var ids in (await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct)).Chunk(ChainsAtOnce))
            foreach (var raw in await RawChain.LoadAsync(db, ids, ct))
                chains.AddRange(Lives(raw.Card, raw.Readings, raw.Events, calendar.Knowing(raw.Ran)));
        return chains;
    }

    /// <summary>
    /// The fitted chains of a position that a model may learn from, each with what its own life shows of its duty.
    /// </summary>
    public static IEnumerable<FleetChain> Lives(
        ChainCard card, IReadOnlyList<Gauging.Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar) =>
        from life in ChainHistory.Take(card, readings, events, calendar).Lives
        where life.Observations.Count > 0
        select new FleetChain(
            DutySeen.Of(card, life, readings, events, calendar), life.Observations)
        { FittingKnown = life.FittingKnown };

    private async Task<bool> KeepAsync(FleetTrainingOutcome.Trained trained, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var newest = await db.FleetModels.OrderByDescending(m => m.Id).Select(m => m.Version).FirstOrDefaultAsync(ct);
        if (newest == trained.Model.Version) return false;
        using var stream = new MemoryStream();
        trained.Model.Save(stream);
        db.FleetModels.Add(new FleetModelRow
        {
            Version = trained.Model.Version,
            TrainedAt = clock.GetUtcNow(),
            Chains = trained.Model.Chains,
            Model = stream.ToArray(),
            Report = JsonSerializer.Serialize(trained.Report, JsonSerializerOptions.Web),
        });
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        logger.FleetModelTrained(trained.Model.Version, trained.Model.Chains);
        return true;
    }
}
