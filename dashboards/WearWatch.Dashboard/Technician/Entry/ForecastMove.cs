
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>How a reading moved the forecast, in words.</summary>
public static class ForecastMove
{
    /// <summary>The move of the early date.</summary>
    public static string Words(DateTimeOffset? before, DateTimeOffset? after, PlantTime time) => (before, after) switch
    {
        (null, null) => "The limit is not in sight.",
        (null, { } now) => $"The early date is {time.Day(now)}: 19 of 20 such chains last longer.",
        ({ } was, null) => $"The early date was {time.Day(was)}; now the limit is not in sight.",
        ({ } was, { } now) => (time.DateOf(now).DayNumber - time.DateOf(was).DayNumber) switch
        {
            0 => $"The early date stays at {time.Day(now)}.",
            < 0 and var days =>
                $"The early date moved {Show.Count(-days, "day")} earlier, from {time.Day(was)} to {time.Day(now)}.",
            var days => $"The early date moved {Show.Count(days, "day")} later, from {time.Day(was)} to {time.Day(now)}.",
        },
    };
}
