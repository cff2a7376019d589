using System.Globalization;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>How likely the limit is reached within a stretch of the calendar.</summary>
/// <param name="From">Its first day.</param>
/// <param name="Name">Its name under the bar.</param>
/// <param name="Probability">The probability.</param>
public sealed record DateBin(DateOnly From, string Name, double Probability);

/// <summary>The distribution of the date at which a chain reaches its limit, in stretches that a person plans in.</summary>
public sealed record DateOdds
{
    private const int MostBins = 18;

    /// <summary>The stretches, in order.</summary>
    public required IReadOnlyList<DateBin> Bins { get; init; }

    /// <summary>The stretch: week, month, quarter or year.</summary>
    public required Phrase Unit { get; init; }

    /// <summary>Probability that the limit has been reached already.</summary>
    public required double Already { get; init; }

    /// <summary>Probability that it is reached later than the last stretch.</summary>
    public required double Later { get; init; }

    /// <summary>Works the distribution out from the hours left and the calendar.</summary>
    /// <param name="forecast">The hours left from the last reading.</param>
    /// <param name="hoursSinceReading">Running hours from the last reading to now.</param>
    /// <param name="calendar">When the line runs.</param>
    /// <param name="time">Now.</param>
    public static DateOdds Of(WearForecast forecast, double hoursSinceReading, ProductionCalendar calendar, PlantTime time)
    {
        var dates = Dates(forecast, hoursSinceReading, calendar, time.Now);
        var end = dates.LastOrDefault(d => d is not null) is { } last ? time.DateOf(last) : time.Today;
        var (unit, nameOf, starts) = Stretches(time.Today, end);
        // The probability up to a date is how many of the percentiles lie before it; between two it is as good as even.
        double UpTo(DateOnly day) => ShareBefore(dates, time.StartOf(day));
        var already = forecast.ProbabilityWithin(hoursSinceReading);
        var bins = new List<DateBin>();
        var before = already;
        for (var i = 0; i + 1 < starts.Count; i++)
        {
            var upTo = Math.Max(before, UpTo(starts[i + 1]));
            bins.Add(new DateBin(starts[i], nameOf(starts[i]), upTo - before));
            before = upTo;
        }

        return new DateOdds { Bins = bins, Unit = unit, Already = already, Later = Math.Max(0, 1 - before) };
    }

    /// <summary>
    /// The date at each percentile, 1 to 99; each is walked to from the one before, so that the calendar is gone through once.
    /// </summary>
    private static List<DateTimeOffset?> Dates(
        WearForecast forecast, double hoursSinceReading, ProductionCalendar calendar, DateTimeOffset now)
    {
        var dates = new List<DateTimeOffset?>();
        (DateTimeOffset? At, double Hours) reached = (now, hoursSinceReading);
        for (var percent = 1; percent <= 99; percent++)
        {
            var hours = forecast.Quantile(percent);
            if (hours is null || reached.At is null) reached = (null, reached.Hours);
            else if (hours > reached.Hours)
                reached = (calendar.After(reached.At.Value, new RunningHours(hours.Value - reached.Hours)), hours.Value);
            dates.Add(reached.At);
        }

        return dates;
    }

    private static double ShareBefore(List<DateTimeOffset?> dates, DateTimeOffset moment)
    {
        var below = dates.FindIndex(d => d is null || d >= moment);
        if (below < 0) return 0.99;
        if (below == 0 || dates[below] is not { } next) return 0.01 * below;
        var previous = dates[below - 1]!.Value;
        return 0.01 * (below + (next > previous ? (moment - previous) / (next - previous) : 0));
    }

    private static (Phrase Unit, Func<DateOnly, string> NameOf, List<DateOnly> Starts) Stretches(DateOnly today, DateOnly end)
    {
        var days = end.DayNumber - today.DayNumber;
        Func<DateOnly, DateOnly> next;
        Func<DateOnly, string> nameOf;
        Phrase unit;
        DateOnly start;
        if (days <= 7 * MostBins)
            (unit, nameOf, start, next) = ($"week", Day, PlantTime.MondayOf(today), d => d.AddDays(7));
        else if (days <= 30 * MostBins)
            (unit, nameOf, start, next) = ($"month", Month, new DateOnly(today.Year, today.Month, 1), d => d.AddMonths(1));
        else if (days <= 91 * MostBins)
        {
            (unit, nameOf, start, next) =
                ($"quarter", Quarter, new DateOnly(today.Year, (today.Month - 1) / 3 * 3 + 1, 1), d => d.AddMonths(3));
        }
        else (unit, nameOf, start, next) = ($"year", Year, new DateOnly(today.Year, 1, 1), d => d.AddYears(1));
        var starts = new List<DateOnly> { start };
        while (starts[^1] <= end && starts.Count <= MostBins + 1) starts.Add(next(starts[^1]));
        return (unit, nameOf, starts);
    }

    private static string Day(DateOnly start) => DateWords.DayOfYear(start, CultureInfo.CurrentCulture);

    private static string Month(DateOnly start) => start.ToString("MMM yy", CultureInfo.CurrentCulture);

    private static string Quarter(DateOnly start) => T[$"Q{(start.Month - 1) / 3 + 1} {start:yy}"];

    private static string Year(DateOnly start) => start.ToString("yyyy", CultureInfo.CurrentCulture);
}
