using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Plant;

/// <summary>The planned hours of a week.</summary>
/// <param name="WorkdayHours">Hours planned on each of Monday to Friday.</param>
/// <param name="SaturdayHours">Hours planned on a Saturday.</param>
/// <param name="SundayHours">Hours planned on a Sunday.</param>
internal sealed record ShiftPattern(double WorkdayHours, double SaturdayHours, double SundayHours)
{
    private const double BreakdownProbability = 0.02;

    /// <summary>Three shifts on five days.</summary>
    public static ShiftPattern FiveDays { get; } = new(24, 0, 0);

    /// <summary>Three shifts on five days and one on Saturday.</summary>
    public static ShiftPattern FiveDaysAndSaturdayMorning { get; } = new(24, 8, 0);

    /// <summary>Three shifts on six days.</summary>
    public static ShiftPattern SixDays { get; } = new(24, 24, 0);

    /// <summary>Round the clock, with eight hours of cleaning and upkeep on Sunday.</summary>
    public static ShiftPattern SevenDaysLessSundayUpkeep { get; } = new(24, 24, 16);

    /// <summary>Round the clock.</summary>
    public static ShiftPattern RoundTheClock { get; } = new(24, 24, 24);

    /// <summary>The share of the planned hours that is run, in the middle over ordinary days and days with a breakdown.</summary>
    public static double MeanAvailability => (1 - BreakdownProbability) * 0.96 + BreakdownProbability * 0.45;

    /// <summary>The hours planned in a week without a shutdown.</summary>
    public double HoursPerWeek => 5 * WorkdayHours + SaturdayHours + SundayHours;

    /// <summary>The share of the planned hours that is run on one day: most of them, and now and then something breaks.</summary>
    public static double AvailabilityOfOneDay(Chance chance) =>
        chance.Happens(BreakdownProbability) ? chance.Between(0.2, 0.7) : chance.Between(0.92, 1.0);

    /// <summary>The hours planned on a day; none over Christmas and in the two weeks of the summer shutdown.</summary>
    public double PlannedHoursOn(DateOnly day)
    {
        if (IsShutdown(day)) return 0;
        return day.DayOfWeek switch
        {
            DayOfWeek.Saturday => SaturdayHours,
            DayOfWeek.Sunday => SundayHours,
            _ => WorkdayHours,
        };
    }

    /// <summary>24 December to 1 January, and 14 days from the first Monday of August.</summary>
    public static bool IsShutdown(DateOnly day)
    {
        if (day is { Month: 12, Day: >= 24 } or { Month: 1, Day: 1 }) return true;
        var august = new DateOnly(day.Year, 8, 1);
        var firstMonday = august.AddDays(((int)DayOfWeek.Monday - (int)august.DayOfWeek + 7) % 7);
        return day >= firstMonday && day < firstMonday.AddDays(14);
    }
}
