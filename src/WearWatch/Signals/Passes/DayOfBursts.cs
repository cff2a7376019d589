using WearWatch.Gauging;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>A day's bursts, each with its phase at 20 degrees of the chain.</summary>
/// <param name="Phases">The phases in order of time, unwrapped about their middle, in pitches.</param>
/// <param name="Used">Those of them that are near the middle.</param>
/// <param name="Trains">The passes of the bursts that have a phase.</param>
/// <param name="Faults">What went wrong at the sensors.</param>
/// <param name="MeanTemperatureC">Mean temperature of the chain in degrees Celsius.</param>
internal sealed record DayOfBursts(
    IReadOnlyList<double> Phases, IReadOnlyList<double> Used, IReadOnlyList<(PassTrain First, PassTrain Second)> Trains,
    PassFaults Faults,
    double MeanTemperatureC)
{
    /// <summary>Less within a day is warming of the frame, not a sensor that moved.</summary>
    private const double SmallestMovePitches = 0.01;

    private const double Outlying = 5;

    public static DayOfBursts Of(SensorPair pair, IReadOnlyList<PassBurst> bursts)
    {
        var (phases, temperatures, trains) = (new List<double>(), new List<double>(), new List<(PassTrain, PassTrain)>());
        var (passes, missed, doubled, stops) = (0, 0, 0, 0);
        foreach (var burst in bursts.OrderBy(b => b.At))
        {
            var (first, second) = (PassTrain.Of(burst.FirstUs), PassTrain.Of(burst.SecondUs));
            passes += first.Numbers.Count + second.Numbers.Count;
            missed += first.Missed + second.Missed;
            doubled += first.Doubled + second.Doubled;
            stops += first.Stops + second.Stops;
            if (BurstPhase.Of(first, second) is not { } phase) continue;
            trains.Add((first, second));
            var celsius = burst.TemperatureC ?? Gauge.ReferenceTemperatureC;
            // A warm chain is longer and fewer of its pitches fit: bring the phase to 20 degrees.
            phases.Add(phase.Fraction
                + pair.NominalPitches * Gauge.SteelExpansionPerKelvin * (celsius - Gauge.ReferenceTemperatureC));
            temperatures.Add(celsius);
        }

        var unwrapped = Unwrapped(phases);
        var used = Near(unwrapped);
        return new DayOfBursts(unwrapped, used, trains, new PassFaults(passes, missed, doubled, stops, bursts.Count - used.Count),
            temperatures.Count == 0 ? Gauge.ReferenceTemperatureC : temperatures.Average());
    }

    /// <summary>The whole pitches between the sensors by the pattern of the joints; null when it does not tell.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="fraction">The day's part of a pitch.</param>
    public int? Count(SensorPair pair, double fraction)
    {
        var pattern = new JointPattern(pair);
        foreach (var (first, second) in Trains) pattern.Add(first, second, fraction);
        return pattern.Count();
    }

    /// <summary>
    /// The day's phase from 0 to 1, and its standard uncertainty by the scatter of the bursts, both in pitches.
    /// </summary>
    public (double Fraction, double Scatter) Phase()
    {
        if (Used.Count == 0) return (0, 0);
        double[] all = [.. Used];
        var mean = all.Average();
        return (mean - Math.Floor(mean), Median.Deviation(all) / Math.Sqrt(all.Length));
    }

    /// <summary>
    /// By how many pitches the end of the day differs from its beginning, when that is more than chance; else null.
    /// </summary>
    /// <param name="scatter">Standard uncertainty of the day's phase, in pitches.</param>
    public double? Moved(double scatter)
    {
        var third = Phases.Count / 3;
        if (third < 2) return null;
        var jump = Median.Of([.. Phases.TakeLast(third)]) - Median.Of([.. Phases.Take(third)]);
        return Math.Abs(jump) > Math.Max(6 * 2.5 * scatter, SmallestMovePitches) ? jump : null;
    }

    /// <summary>The phases about the one that has the others nearest.</summary>
    private static List<double> Unwrapped(List<double> phases)
    {
        if (phases.Count == 0) return [];
        var middle = phases.MinBy(p => phases.Sum(q => Math.Abs(BurstPhase.Wrap(q - p))));
        return phases.ConvertAll(p => middle + BurstPhase.Wrap(p - middle));
    }

    private static List<double> Near(List<double> phases)
    {
        if (phases.Count == 0) return [];
        double[] all = [.. phases];
        var middle = Median.Of(all);
        var reach = Math.Max(Outlying * Median.DeviationAbout(middle, all), SmallestMovePitches);
        return phases.FindAll(p => Math.Abs(p - middle) <= reach);
    }
}
