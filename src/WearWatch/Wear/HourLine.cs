using System.Runtime.InteropServices;
using WearWatch.Phrases;
using WearWatch.Trends;

namespace WearWatch.Wear;

/// <summary>The running hours of a position without a break: what the counter would show had it never been changed.</summary>
/// <remarks>
/// Over a recorded change the count goes on from the value before. A fall that nobody recorded is a counter that rolled over, or
/// was set back: the hours are then at least what it shows now, and hardly less than usual between two readings, so
/// <c>max(new value, median of the earlier gaps)</c> are added. A single value that the next reading passes over is a slip of the
/// pen.
/// </remarks>
internal sealed class HourLine
{
    private const double LeapOverUsualGap = 10;
    private const double ShortestUsualGapHours = 100;

    /// <summary>Counters are read and rounded by people: so small a fall is none, and nothing was set back.</summary>
    public const double RoundingHours = 1;

    private static readonly double[] RollOvers = [10_000, 100_000, 1_000_000];

    private readonly List<double> gaps = [];
    private readonly Dictionary<int, Phrase> slips = [];
    private double line;
    private double? meter;
    private double? lineAtReading;

    private HourLine(Happening[] log)
    {
        Hours = new double?[log.Length];
        for (var i = 0; i < log.Length; i++) Hours[i] = Take(log, i);
    }

    /// <summary>Hours on the line for every entry of the log; null where nothing places it.</summary>
    public double?[] Hours { get; }

    /// <summary>Readings, by their index, whose counter cannot be, with why.</summary>
    public IReadOnlyDictionary<int, Phrase> Slips => slips;

    /// <summary>Lays a log with filled counters on a line.</summary>
    public static HourLine Of(Happening[] log) => new(log);

    /// <summary>Whether hours between two counts are those over the counter's end.</summary>
    public static bool IsRollOver(double last, double now, double hours) =>
        Array.Exists(RollOvers, end => last > 0.9 * end && Math.Abs(end - last + now - hours) < 0.5);

    private double? Take(Happening[] log, int index)
    {
        var entry = log[index];
        // A change of counter whose value before nobody knows is worth no more than the fall that follows it.
        if (entry.Before is not { } before) return null;

        if (entry.ReadingIndex >= 0 && SlipOf(log, index, before) is { } why)
        {
            slips[entry.ReadingIndex] = why;
            return null;
        }

        if (meter is { } last) line += before >= last - RoundingHours ? Math.Max(0, before - last) : AfterFall(last, before);
        meter = entry.After ?? before;
        if (entry.ReadingIndex >= 0)
        {
            if (line > lineAtReading) gaps.Add(line - lineAtReading.Value);
            lineAtReading = line;
        }

        return line;
    }

    private double AfterFall(double last, double now)
    {
        var usual = UsualGap();
        foreach (var end in RollOvers)
        {
            var over = end - last + now;
            if (last < end && last > 0.9 * end && over <= 2 * usual) return over;
        }

        return Math.Max(now, usual);
    }

    private double UsualGap() => gaps.Count == 0 ? 0 : Median.Of(CollectionsMarshal.AsSpan(gaps));

    private Phrase? SlipOf(Happening[] log, int index, double counter)
    {
        if (meter is not { } last || index + 1 >= log.Length || log[index + 1] is not { ReadingIndex: >= 0, Before: { } next })
            return null;
        var afterReading = lineAtReading is not null && log[index - 1].ReadingIndex >= 0;
        var dipped = afterReading && counter < last && next >= last;
        var leapt = counter - last > LeapOverUsualGap * Math.Max(UsualGap(), ShortestUsualGapHours) && next >= last
            && next < counter;
        return dipped || leapt
            ? Phrase.Of($"The counter stood at {last:#,0} h before and at {next:#,0} h after: {counter:#,0} h cannot be.")
            : null;
    }
}
