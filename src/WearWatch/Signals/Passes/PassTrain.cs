using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>
/// The passes at one sensor with the number of each roller: what was missed is left out of the count, what came double is
/// dropped.
/// </summary>
/// <remarks>
/// A pulse belongs to the comb of its neighbours when it lies a whole number of periods after the last one, within a quarter; the
/// period is the median of the nine intervals around. One that does not is a double pulse. A number that is skipped was missed. A
/// gap of more than <see cref="LongestGap"/> periods is a stop: numbers go on behind it, and nothing is measured across it.
/// </remarks>
public sealed class PassTrain
{
    /// <summary>More periods without a pass are a chain that stands.</summary>
    public const double LongestGap = 5.5;

    private const int Around = 4;
    private const double OffComb = 0.25;

    private PassTrain(
        IReadOnlyList<int> numbers, IReadOnlyList<double> timesUs, int missed, int doubled, int stops, double pitchesPerSecond) =>
        (Numbers, TimesUs, Missed, Doubled, Stops, PitchesPerSecond) =
            (numbers, timesUs, missed, doubled, stops, pitchesPerSecond);

    /// <summary>The rollers' numbers, rising, from 0.</summary>
    public IReadOnlyList<int> Numbers { get; }

    /// <summary>When each passed, in microseconds.</summary>
    public IReadOnlyList<double> TimesUs { get; }

    /// <summary>Pulses that were missed.</summary>
    public int Missed { get; }

    /// <summary>Pulses too many.</summary>
    public int Doubled { get; }

    /// <summary>How often the chain stood.</summary>
    public int Stops { get; }

    /// <summary>Rollers a second, in the middle.</summary>
    public double PitchesPerSecond { get; }

    /// <summary>Whether pass i + 1 is of the roller right behind that of pass i.</summary>
    public bool IsNext(int i) => i + 1 < Numbers.Count && Numbers[i + 1] == Numbers[i] + 1;

    /// <summary>Numbers the passes at a sensor.</summary>
    /// <param name="timesUs">When pulses came, in microseconds, rising; at least three.</param>
    public static PassTrain Of(IReadOnlyList<long> timesUs)
    {
        var periods = Periods(timesUs);
        var (numbers, times) = (new List<int>(timesUs.Count), new List<double>(timesUs.Count));
        var (missed, doubled, stops) = (0, 0, 0);
        for (var i = 0; i < timesUs.Count; i++)
        {
            if (numbers.Count == 0)
            {
                if (i + 1 < timesUs.Count && !IsOnComb((timesUs[i + 1] - timesUs[i]) / periods[i])) doubled++;
                else Add(0, timesUs[i]);
                continue;
            }

            var steps = (timesUs[i] - times[^1]) / periods[i];
            if (steps > LongestGap)
            {
                stops++;
                Add(numbers[^1] + 2, timesUs[i]); // not the next one: nothing spans the gap
            }
            else if (!IsOnComb(steps)) doubled++;
            else
            {
                var whole = (int)Math.Round(steps);
                missed += whole - 1;
                Add(numbers[^1] + whole, timesUs[i]);
            }
        }

        return new PassTrain(numbers, times, missed, doubled, stops, 1e6 / Median.Of(periods));

        void Add(int number, double at)
        {
            numbers.Add(number);
            times.Add(at);
        }
    }

    private static bool IsOnComb(double steps) => steps > 0.5 && Math.Abs(steps - Math.Round(steps)) <= OffComb;

    private static double[] Periods(IReadOnlyList<long> timesUs)
    {
        var intervals = new double[timesUs.Count - 1];
        for (var i = 0; i < intervals.Length; i++) intervals[i] = timesUs[i + 1] - timesUs[i];
        var periods = new double[timesUs.Count];
        for (var i = 0; i < periods.Length; i++)
        {
            var from = Math.Clamp(i - Around, 0, intervals.Length - 1);
            periods[i] = Median.Of(intervals.AsSpan(from, Math.Min(2 * Around + 1, intervals.Length - from)));
        }

        return periods;
    }
}
