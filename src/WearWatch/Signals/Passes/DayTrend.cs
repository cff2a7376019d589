using WearWatch.Gauging;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>
/// What a day's phases follow: the frame's warmth, the chain's lag behind its thermometer, a delay between the channels.
/// </summary>
/// <remarks>
/// Least squares with what is known before of each, as further rows of the system (a Bayesian's normal priors): the frame warms
/// by 0 to 1 of the chain, the chain lags by up to some hours, channels of one device answer within some microseconds. The noise
/// comes from successive differences, which a move within the day does not widen (von Neumann 1941). Columns are made square to
/// each other one after the other (Gram and Schmidt), so that each further one, such as a step, costs one pass.
/// </remarks>
internal sealed class DayTrend
{
    /// <summary>Less is no move, in millimetres: a sensor's bracket gives as much.</summary>
    private const double SmallestMoveMm = 0.15;

    /// <summary>
    /// In standard deviations: of all bursts at which it may have moved, chance reaches 4 once in hundreds of days.
    /// </summary>
    private const double ClearMove = 5.5;

    /// <summary>So many bursts before and behind a move show it.</summary>
    internal const int FewestEachSide = 3;

    private const double FrameShare = 1;
    private const double LagHours = 2;

    /// <summary>Channels of one device differ by so much in their answer, in seconds. Common practice.</summary>
    private const double OneDeviceS = 20e-6;

    /// <summary>Channels of two devices may differ by so much, in seconds: only if the phase follows the speed so.</summary>
    private const double TwoDevicesS = 1e-3;

    /// <summary>A speed that varies by less tells nothing of a delay.</summary>
    private const double VariedSpeed = 0.05;

    private const double Sure = 4;
    private const double SmallestNoise = 1e-5;

    private readonly IReadOnlyList<BurstState> bursts;
    private readonly List<double[]> square = [];
    private readonly double[] rest;
    private readonly double noise;
    private readonly double pitchMm;

    private DayTrend(SensorPair pair, IReadOnlyList<BurstState> bursts, double delayS)
    {
        (this.bursts, pitchMm) = (bursts, pair.PitchMm);
        noise = Math.Max(Noise([.. bursts.Select(b => b.Phase)]), SmallestNoise);
        rest = [.. bursts.Select(b => b.Phase), 0, 0, 0];
        var perKelvin = pair.NominalPitches * Gauge.SteelExpansionPerKelvin;
        var (speed, celsius) = (bursts.Average(b => b.PitchesPerSecond), bursts.Average(b => b.TemperatureC));
        Take(_ => 1, 0, double.PositiveInfinity);
        Take(i => perKelvin * (bursts[i].TemperatureC - celsius), 0, FrameShare);
        Take(i => perKelvin * WarmingPerHour(i), 1, LagHours);
        var delay = Take(i => bursts[i].PitchesPerSecond - speed, 2, delayS);
        (DelayS, DelayUncertaintyS) = (delay.Share, delay.Uncertainty);
    }

    /// <summary>By how much the second channel is late, in seconds.</summary>
    public double DelayS { get; }

    /// <summary>Its standard uncertainty.</summary>
    public double DelayUncertaintyS { get; }

    /// <summary>The day's phase at no delay, not wrapped, in pitches.</summary>
    public double Phase => bursts.Average(b => b.Phase - DelayS * b.PitchesPerSecond);

    /// <summary>Standard uncertainty of the day's phase by the scatter of the bursts about the trend, in pitches.</summary>
    public double Scatter
    {
        get
        {
            var about = rest.AsSpan(0, bursts.Count);
            return Median.DeviationAbout(Median.Of(about), about) / Math.Sqrt(bursts.Count);
        }
    }

    /// <summary>Standard uncertainty of the day's phase by the channels' delay, in pitches.</summary>
    public double Timing => DelayUncertaintyS * bursts.Average(b => b.PitchesPerSecond);

    /// <summary>Fits the trend of a day.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="bursts">At least one.</param>
    public static DayTrend Of(SensorPair pair, IReadOnlyList<BurstState> bursts)
    {
        double[] speeds = [.. bursts.Select(b => b.PitchesPerSecond)];
        if (Median.Deviation(speeds) < VariedSpeed * Median.Of(speeds)) return new DayTrend(pair, bursts, OneDeviceS);
        var free = new DayTrend(pair, bursts, TwoDevicesS);
        return Math.Abs(free.DelayS) > Sure * Math.Sqrt(free.DelayUncertaintyS * free.DelayUncertaintyS + OneDeviceS * OneDeviceS)
            ? free
            : new DayTrend(pair, bursts, OneDeviceS);
    }

    /// <summary>
    /// The clearest step of the day that is more than chance and trend: after how many hours, and by how many pitches; null when
    /// there is none. It may be at any burst but the first and last ones.
    /// </summary>
    public (double Hours, double Pitches)? Moved()
    {
        (double Hours, double Pitches)? found = null;
        var clearest = ClearMove;
        for (var from = FewestEachSide; from <= bursts.Count - FewestEachSide; from++)
        {
            var step = new double[rest.Length];
            Array.Fill(step, 1, from, bursts.Count - from);
            MakeSquare(step);
            var length = Math.Sqrt(Dot(step, step));
            var jump = Dot(step, rest) / (length * length);
            if (Math.Abs(jump) * pitchMm < SmallestMoveMm || !(Math.Abs(jump) * length / noise > clearest)) continue;
            (found, clearest) = ((bursts[from].Hours, jump), Math.Abs(jump) * length / noise);
        }

        return found;
    }

    /// <summary>Takes a column into the trend, with the row of what is known of its share before.</summary>
    private (double Share, double Uncertainty) Take(Func<int, double> column, int row, double before)
    {
        var values = new double[rest.Length];
        for (var i = 0; i < bursts.Count; i++) values[i] = column(i);
        if (double.IsFinite(before)) values[bursts.Count + row] = noise / before;
        MakeSquare(values);
        var squares = Dot(values, values);
        var share = Dot(values, rest) / squares;
        for (var i = 0; i < rest.Length; i++) rest[i] -= share * values[i];
        square.Add(values);
        return (share, noise / Math.Sqrt(squares));
    }

    private void MakeSquare(double[] values)
    {
        foreach (var column in square)
        {
            var share = Dot(values, column) / Dot(column, column);
            for (var i = 0; i < values.Length; i++) values[i] -= share * column[i];
        }
    }

    private double WarmingPerHour(int i)
    {
        var (from, to) = (bursts[Math.Max(0, i - 1)], bursts[Math.Min(bursts.Count - 1, i + 1)]);
        return to.Hours > from.Hours ? (to.TemperatureC - from.TemperatureC) / (to.Hours - from.Hours) : 0;
    }

    private static double Noise(double[] phases)
    {
        if (phases.Length < 2) return 0;
        double[] steps = [.. phases.Skip(1).Zip(phases, (later, earlier) => later - earlier)];
        return Median.DeviationAbout(0, steps) / Math.Sqrt(2);
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
