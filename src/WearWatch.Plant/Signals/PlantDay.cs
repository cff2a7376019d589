namespace WearWatch.Plant.Signals;

/// <summary>A day by the plant's clock; 23 or 25 hours long where the clock changes.</summary>
/// <param name="Start">Its beginning.</param>
/// <param name="End">Its end.</param>
public readonly record struct PlantDay(DateTimeOffset Start, DateTimeOffset End)
{
    /// <summary>The day in which a moment lies.</summary>
    public static PlantDay Of(DateTimeOffset moment, TimeZoneInfo zone)
    {
        var day = TimeZoneInfo.ConvertTime(moment, zone).Date;
        return new PlantDay(Begin(day, zone), Begin(day.AddDays(1), zone));
    }

    private static DateTimeOffset Begin(DateTime day, TimeZoneInfo zone)
    {
        if (zone.IsInvalidTime(day)) day = day.AddHours(1);
        return new DateTimeOffset(day, zone.GetUtcOffset(day)).ToUniversalTime();
    }
}
