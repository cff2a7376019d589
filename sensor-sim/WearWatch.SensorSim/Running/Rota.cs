using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Running;

/// <summary>Work that comes back every so many days and is done by day on weekdays, roughly when it is due.</summary>
internal static class Rota
{
    /// <summary>The moments at which it is done, for ever; each a multiple of five minutes.</summary>
    /// <param name="from">The work is first due after this.</param>
    /// <param name="firstAfterDays">Days until it is first due.</param>
    /// <param name="everyDays">Days from one time to the next, in the middle.</param>
    /// <param name="chance">How far it slips.</param>
    public static IEnumerable<DateTimeOffset> Times(DateTimeOffset from, double firstAfterDays, double everyDays, Chance chance)
    {
        for (var due = from.AddDays(firstAfterDays); ; due = due.AddDays(everyDays * chance.Normal(1, 0.12, 0.75, 1.25)))
            yield return WorkingHourOn(DateOnly.FromDateTime(MillClock.At(due).Date), chance);
    }

    private static DateTimeOffset WorkingHourOn(DateOnly day, Chance chance)
    {
        var weekday = day.DayOfWeek switch
        {
            DayOfWeek.Saturday => day.AddDays(2),
            DayOfWeek.Sunday => day.AddDays(1),
            _ => day,
        };
        return MillClock.At(weekday, new TimeOnly(chance.Whole(6, 16), 5 * chance.Whole(0, 11)));
    }
}
