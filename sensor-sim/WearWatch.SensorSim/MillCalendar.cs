using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim;

/// <summary>What a plant's settings need to know of the mill: its name, its time zone, when it runs.</summary>
/// <remarks>
/// The lines keep different shifts, so the mill as a whole is told as running round the clock at the share of
/// <see cref="Utilisation"/>, less its shutdowns.
/// </remarks>
public static class MillCalendar
{
    private const double HoursPerWeek = 7 * 24;

    /// <summary>The mill's name; there is no such mill.</summary>
    public const string MillName = "Quillfen board and pellet mill";

    /// <summary>The time zone in which its files tell times, by its name in the IANA database.</summary>
    public const string TimeZoneId = "Europe/Berlin";

    /// <summary>The share of all hours outside the shutdowns that a position runs, in the middle over all positions.</summary>
    public static double Utilisation { get; } = ShiftPattern.MeanAvailability
        * Mill.Lines.SelectMany(line => line.Positions.Select(_ => line.Shifts.HoursPerWeek)).Average() / HoursPerWeek;

    /// <summary>The days of the shutdowns from one day (included) to another (not included).</summary>
    public static IEnumerable<DateOnly> ShutdownDays(DateOnly from, DateOnly to) => Enumerable
        .Range(0, Math.Max(0, to.DayNumber - from.DayNumber))
        .Select(from.AddDays)
        .Where(ShiftPattern.IsShutdown);
}
