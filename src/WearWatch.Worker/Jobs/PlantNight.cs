using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Jobs;

/// <summary>The hours of the plant's own day at which the jobs of the night are due.</summary>
public sealed class PlantNight(PlantSettings plant, TimeProvider clock)
{
    /// <summary>When it was last so late in the plant.</summary>
    /// <param name="hour">The hour of day, 0 to 23.</param>
    /// <param name="ct">Gives up.</param>
    public async Task<DateTimeOffset> LastAsync(int hour, CancellationToken ct)
    {
        var zone = (await plant.CalendarAsync(ct)).TimeZone;
        var now = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), zone).DateTime;
        var last = now.Date.AddHours(hour);
        if (last > now) last = last.AddDays(-1);
        return new DateTimeOffset(last, zone.GetUtcOffset(last));
    }
}
