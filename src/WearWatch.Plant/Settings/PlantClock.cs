namespace WearWatch.Plant.Settings;

/// <summary>Gives the plant's time to the queries behind the pages.</summary>
public sealed class PlantClock(PlantSettings settings, TimeProvider clock)
{
    /// <summary>The moment, in the plant's time zone; UTC until a plant has been set up.</summary>
    public async Task<PlantTime> NowAsync(CancellationToken ct)
    {
        var plant = await settings.CurrentAsync(ct);
        return new PlantTime(clock.GetUtcNow(), ZoneOf(plant.TimeZone));
    }

    /// <summary>The zone of an IANA name; UTC for one that this machine does not know.</summary>
    public static TimeZoneInfo ZoneOf(string? name) =>
        name is not null && TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) ? zone : TimeZoneInfo.Utc;
}
