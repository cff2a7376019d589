using Microsoft.Extensions.Options;
using WearWatch.Plant.Books;
using WearWatch.Plant.Tracking;

namespace WearWatch.Worker.Jobs;

/// <summary>
/// Once a night of the plant: trains the fleet model, calibrates the constants of wear, looks whether forecasts held.
/// </summary>
/// <remarks>The review that comes next takes up what is new.</remarks>
public sealed class FleetSchool(
    FleetModels models, Calibrations calibrations, SpreadCheck spread, PlantNight night, JobBook book,
    IOptions<WearWatchOptions> options)
{
    /// <summary>The training in the book of jobs.</summary>
    public const string Job = "training of the fleet model";

    /// <summary>
    /// Trains, if nothing was trained since the plant's last training hour. A night that was missed is made up for.
    /// </summary>
    /// <returns>Whether there is something new.</returns>
    public async Task<bool> RunOnceAsync(CancellationToken ct = default)
    {
        var due = await night.LastAsync(options.Value.TrainingHour, ct);
        if (await book.DoneAtAsync(Job, ct) >= due || await models.TrainedAtAsync(ct) >= due) return false;
        var isNew = false;
        await book.RunAsync(
            Job, async stop => isNew =
                await models.TrainAsync(stop) | await calibrations.CalibrateAsync(stop) | await spread.RunOnceAsync(stop), ct);
        return isNew;
    }
}
