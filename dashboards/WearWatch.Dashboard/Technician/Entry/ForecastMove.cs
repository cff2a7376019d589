using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>How a reading moved the forecast, in words.</summary>
public static class ForecastMove
{
    /// <summary>The move of the early date.</summary>
    public static string Words(DateTimeOffset? before, DateTimeOffset? after, PlantTime time) => (before, after) switch
    {
        (null, null) => T["The limit is not in sight."],
        (null, { } now) => T[$"The early date is {time.DateOf(now)}: 19 of 20 such chains last longer."],
        ({ } was, null) => T[$"The early date was {time.DateOf(was)}; now the limit is not in sight."],
        ({ } was, { } now) => T[Moved(time.DateOf(was), time.DateOf(now))],
    };

    private static Phrase Moved(DateOnly was, DateOnly now) => (now.DayNumber - was.DayNumber) switch
    {
        0 => $"The early date stays at {now}.",
        < 0 and var days => Phrase.Counted(
            -days, $"The early date moved {-days:#,0} day earlier, from {was} to {now}.",
            $"The early date moved {-days:#,0} days earlier, from {was} to {now}."),
        var days => Phrase.Counted(
            days, $"The early date moved {days:#,0} day later, from {was} to {now}.",
            $"The early date moved {days:#,0} days later, from {was} to {now}."),
    };
}
