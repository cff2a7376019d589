using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim;

/// <summary>A planned shutdown of a line, by the mill's wall clock.</summary>
/// <param name="Line">The line that stands still.</param>
/// <param name="FirstStart">When it begins for the first time.</param>
/// <param name="Hours">How long the line stands.</param>
/// <param name="Recurrence">How it comes again, by RFC 5545.</param>
/// <param name="People">How many of the fitters are there.</param>
public sealed record MillShutdown(string Line, DateTime FirstStart, double Hours, string Recurrence, int People);

/// <summary>What lies in the mill's store.</summary>
/// <param name="Kind">Chain, ConnectingLink or OffsetLink.</param>
/// <param name="ChainType">The chain type that it belongs to.</param>
/// <param name="InStock">Pitches of chain, pieces of links.</param>
/// <param name="LeadDays">Days from order to delivery.</param>
/// <param name="PackSize">What a pack holds.</param>
/// <param name="Price">Price of a pitch or a piece.</param>
public sealed record MillSpare(string Kind, string ChainType, int InStock, int LeadDays, int PackSize, double Price);

/// <summary>
/// When the mill's lines stand still for upkeep, what lies in its store, and what a stopped line costs it. All invented.
/// </summary>
public static class MillWorkshop
{
    /// <summary>The crew's name.</summary>
    public const string Crew = "fitters";

    /// <summary>
    /// Each line's upkeep, on the day of the week on which it runs least, and a long one at the end of the year.
    /// </summary>
    public static IReadOnlyList<MillShutdown> ShutdownsAfter(DateOnly day) => [.. Mill.Lines.SelectMany((line, index) => new[]
    {
        new MillShutdown(line.Name, FirstUpkeep(line.Shifts, day, index).ToDateTime(new TimeOnly(6, 0)), 8,
            line.Shifts == ShiftPattern.RoundTheClock ? "FREQ=WEEKLY;INTERVAL=4" : "FREQ=WEEKLY;INTERVAL=2", 3),
        new MillShutdown(line.Name, new DateTime(day.Year, 12, 28, 6, 0, 0), 10, "FREQ=YEARLY", 6),
    })];

    /// <summary>Half of the chain types lie there, enough for one swap of the longest; links for all.</summary>
    public static IReadOnlyList<MillSpare> Store { get; } = [.. Mill.Lines.SelectMany(line => line.Positions)
        .GroupBy(position => position.Size.Designation, StringComparer.Ordinal)
        .OrderBy(type => type.Key, StringComparer.Ordinal)
        .SelectMany((type, index) => SparesOf(type.First().Size, type.Max(position => position.Pitches), index))];

    /// <summary>What an hour of a stopped line costs the mill.</summary>
    public static IReadOnlyDictionary<string, double> StoppedPerHour { get; } = Mill.Lines
        .Select((line, index) => (line.Name, Cost: 300.0 + 250 * index)).ToDictionary(line => line.Name, line => line.Cost);

    private static DateOnly FirstUpkeep(ShiftPattern shifts, DateOnly day, int index)
    {
        var weekday = shifts.SaturdayHours < shifts.WorkdayHours ? DayOfWeek.Saturday : DayOfWeek.Sunday;
        return day.AddDays(1 + ((int)weekday - (int)day.DayOfWeek + 6) % 7 + 7 * (index % 2));
    }

    private static IEnumerable<MillSpare> SparesOf(ChainSize size, int longest, int index)
    {
        var pitchPrice = Math.Round(0.8 + size.PitchMm * size.PitchMm / 500, 2);
        var pack = (int)Math.Ceiling(3048 / size.PitchMm); // ten feet, as chain is often packed
        yield return new(
            "Chain", size.Designation, index % 2 == 0 ? (longest / pack + 1) * pack : 0, 21 + 14 * (index % 4), pack, pitchPrice);
        yield return new("ConnectingLink", size.Designation, 4, 14, 5, Math.Round(2 * pitchPrice, 2));
        if (index % 3 == 0) yield return new("OffsetLink", size.Designation, 1, 28, 1, Math.Round(3 * pitchPrice, 2));
    }
}
