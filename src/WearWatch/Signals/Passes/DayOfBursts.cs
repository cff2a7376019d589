using WearWatch.Gauging;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>A day's bursts, each with its phase at 20 degrees of the chain.</summary>
/// <param name="Bursts">The bursts in order of time that are near those around them.</param>
/// <param name="Trains">Their passes.</param>
/// <param name="Faults">What went wrong at the sensors.</param>
/// <param name="Clock">What the clocks of the two channels differ by, and its standard uncertainty, in pitches of phase.</param>
/// <param name="RateRatio">How many passes the second sensor tells for each of the first.</param>
internal sealed record DayOfBursts(
    IReadOnlyList<BurstState> Bursts, IReadOnlyList<(PassTrain First, PassTrain Second)> Trains, PassFaults Faults,
    (double Pitches, double Uncertainty) Clock, double RateRatio)
{
    /// <summary>Clocks of two channels differ by so much: quartz. Common practice.</summary>
    private const double ClockShare = 100e-6;

    private const double Outlying = 6;
    private const double SmallestOutlier = 0.01;
    private const int Around = 4;

    /// <summary>Mean temperature of the chain in degrees Celsius.</summary>
    public double MeanTemperatureC => Bursts.Count == 0 ? Gauge.ReferenceTemperatureC : Bursts.Average(b => b.TemperatureC);

    public static DayOfBursts Of(SensorPair pair, IReadOnlyList<PassBurst> bursts)
    {
        var seen = new List<(PassBurst Burst, BurstPhase Phase, PassTrain First, PassTrain Second)>();
        var (passes, missed, doubled, stops) = (0, 0, 0, 0);
        var ratios = new List<double>();
        foreach (var burst in bursts.OrderBy(b => b.At))
        {
            var (first, second) = (PassTrain.Of(burst.FirstUs), PassTrain.Of(burst.SecondUs));
            passes += first.Numbers.Count + second.Numbers.Count;
            missed += first.Missed + second.Missed;
            doubled += first.Doubled + second.Doubled;
            stops += first.Stops + second.Stops;
            ratios.Add(second.PitchesPerSecond / first.PitchesPerSecond);
            if (BurstPhase.Of(first, second) is { } phase) seen.Add((burst, phase, first, second));
        }

        var clock = Clocks([.. seen.Select(s => s.Phase.Slope)]);
        var begin = seen.Count == 0 ? default : seen[0].Burst.At;
        var states = Unwrapped(seen.ConvertAll(s => State(pair, s.Burst, s.Phase, clock.Share, begin)));
        var near = Near(states);
        var travel = near.Count == 0 ? 0 : near.Average(i => seen[i].Phase.MeanTravel);
        return new DayOfBursts([.. near.Select(i => states[i])], [.. near.Select(i => (seen[i].First, seen[i].Second))],
            new PassFaults(passes, missed, doubled, stops, bursts.Count - near.Count),
            (clock.Share * travel, clock.Uncertainty * travel), ratios.Count == 0 ? 1 : Median.Of([.. ratios]));
    }

    /// <summary>The pattern of the joints.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="fraction">The day's part of a pitch.</param>
    public JointPattern Pattern(SensorPair pair, double fraction)
    {
        var pattern = new JointPattern(pair);
        foreach (var (first, second) in Trains) pattern.Add(first, second, fraction);
        return pattern;
    }

    private static BurstState State(
        SensorPair pair, PassBurst burst, BurstPhase phase, double clockShare, DateTimeOffset begin)
    {
        var celsius = burst.TemperatureC ?? Gauge.ReferenceTemperatureC;
        // A warm chain is longer and fewer of its pitches fit: bring the phase to 20 degrees. The clocks began together.
        var warm = pair.NominalPitches * Gauge.SteelExpansionPerKelvin * (celsius - Gauge.ReferenceTemperatureC);
        return new BurstState((burst.At - begin).TotalHours, phase.Fraction + warm - clockShare * phase.MeanTravel,
            phase.PitchesPerSecond, celsius);
    }

    /// <summary>By which share the second channel's clock is fast: what the phase rises by within bursts.</summary>
    private static (double Share, double Uncertainty) Clocks(double[] slopes)
    {
        if (slopes.Length < PassDay.FewestBursts) return (0, ClockShare);
        // The standard error of a median, against what quartz clocks can differ by.
        var error = Math.Sqrt(Math.PI / 2) * Median.Deviation(slopes) / Math.Sqrt(slopes.Length);
        var weight = ClockShare * ClockShare / (ClockShare * ClockShare + error * error);
        return (weight * Median.Of(slopes), Math.Sqrt(weight) * error);
    }

    /// <summary>Each phase about the middle of those before it: so a jump by half a pitch stays one jump.</summary>
    private static List<BurstState> Unwrapped(List<BurstState> states)
    {
        var unwrapped = new List<BurstState>(states.Count);
        foreach (var state in states)
        {
            double[] before = [.. unwrapped.TakeLast(Around + 1).Select(s => s.Phase)];
            var middle = before.Length == 0 ? state.Phase : Median.Of(before);
            unwrapped.Add(state with { Phase = middle + BurstPhase.Wrap(state.Phase - middle) });
        }

        return unwrapped;
    }

    /// <summary>The bursts that are near the middle of those around them; one that ran backwards is not.</summary>
    private static List<int> Near(List<BurstState> states)
    {
        if (states.Count == 0) return [];
        var off = new double[states.Count];
        for (var i = 0; i < off.Length; i++)
        {
            var from = Math.Clamp(i - Around, 0, Math.Max(0, off.Length - 2 * Around - 1));
            var around = states.GetRange(from, Math.Min(2 * Around + 1, off.Length - from));
            off[i] = states[i].Phase - Median.Of([.. around.Select(s => s.Phase)]);
        }

        var reach = Math.Max(Outlying * Median.DeviationAbout(0, off), SmallestOutlier);
        var near = Array.ConvertAll(off, o => Math.Abs(o) <= reach);
        KeepEnd(i => i);
        KeepEnd(i => off.Length - 1 - i);
        return [.. Enumerable.Range(0, off.Length).Where(i => near[i])];

        // Some bursts in a row at an end of the day that lie off by the same are a move soon after it began or before it ended.
        void KeepEnd(Func<int, int> at)
        {
            int[] ends = [.. Enumerable.Range(0, off.Length).Select(at).TakeWhile(i => !near[i])];
            if (ends.Length < DayTrend.FewestEachSide) return;
            var middle = Median.Of([.. ends.Select(i => states[i].Phase)]);
            if (!ends.All(i => Math.Abs(states[i].Phase - middle) <= reach)) return;
            foreach (var i in ends) near[i] = true;
        }
    }
}
