using Microsoft.Extensions.Options;
using WearWatch.Worker.Tracking;

namespace WearWatch.Worker.Jobs;

/// <summary>Trains the fleet model and calibrates the constants of wear once a night of the plant. The review that comes next takes them up.</summary>
public sealed class FleetSchool(
    FleetModels models, Calibrations calibrations, PlantSettings plant, IOptions<WearWatchOptions> options, TimeProvider clock)
{
    private DateOnly? lastNight;

    /// <summary>Trains, if this night's training has not been done.</summary>
    /// <returns>Whether there is something new.</returns>
    public async Task<bool> RunOnceAsync(CancellationToken ct = default)
    {
        var now = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), (await plant.CalendarAsync(ct)).TimeZone);
        var night = DateOnly.FromDateTime(now.Date);
        if (now.Hour < options.Value.TrainingHour || lastNight == night) return false;
        // A process that starts by day has the night behind it and need not train at once, unless there is no model at all.
        var isCatchingUp = lastNight is null && now.Hour > options.Value.TrainingHour && await models.CurrentAsync(ct) is not null;
        lastNight = night;
        if (isCatchingUp) return false;
        var hasNewModel = await models.TrainAsync(ct);
        return await calibrations.CalibrateAsync(ct) || hasNewModel;
    }
}
