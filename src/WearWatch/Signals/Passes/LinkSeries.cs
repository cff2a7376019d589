using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>What the links of a chain say one after the other, by number, cleaned of what is not of single links.</summary>
/// <remarks>
/// Taken away are: what every second and fourth value has in common, since outer links have grown and inner ones have not; of a
/// series that holds the speed what changes slowly, by a local parabola (Savitzky and Golay 1964) taken away twice; and what
/// comes once, twice and three times in a turn of the sprocket, whose tooth each roller meets in turn. A value beyond four robust
/// deviations is held there, so that one worn or offset link does not speak for all.
/// </remarks>
internal sealed class LinkSeries
{
    /// <summary>Outer and inner links, each of them once or, where each pitch is told twice, two times in a row.</summary>
    private const int Kinds = 4;

    private const int Around = 6;
    private const int Harmonics = 3;
    private const double Held = 4;
    private const int FewestValues = 8;

    private readonly double[] values;

    private LinkSeries(double[] values) => this.values = values;

    /// <summary>Places in the series, known or not.</summary>
    public int Length => values.Length;

    /// <summary>The value at a link's number; NaN where nothing is known.</summary>
    public double this[int number] => number < 0 || number >= values.Length ? double.NaN : values[number];

    /// <summary>Cleans a series.</summary>
    /// <param name="raw">Values by number; NaN where unknown. It is left as it is.</param>
    /// <param name="teeth">Teeth of the sprocket; null when nobody told.</param>
    /// <param name="half">Half the width of the local parabola in links; 0 for a series that holds no speed.</param>
    public static LinkSeries Of(double[] raw, int? teeth, int half)
    {
        var edge = 2 * half;
        var cleaned = new double[raw.Length];
        Array.Fill(cleaned, double.NaN);
        if (raw.Length <= 2 * edge + FewestValues) return new LinkSeries(cleaned);
        var known = Array.ConvertAll(raw, double.IsFinite);
        var rest = WithoutKinds(Filled(raw), known);
        if (half > 0) rest = WithoutTrend(WithoutTrend(rest, half), half);
        if (teeth is { } z) WithoutTurns(rest, edge, z);
        var reach = Held * Median.DeviationAbout(0, rest.AsSpan(edge, rest.Length - 2 * edge));
        for (var i = edge; i < raw.Length - edge; i++) if (known[i]) cleaned[i] = Math.Clamp(rest[i], -reach, reach);
        return new LinkSeries(cleaned);
    }

    /// <summary>Unknown values as the mean of the known ones of the same kind around.</summary>
    private static double[] Filled(double[] raw)
    {
        var filled = (double[])raw.Clone();
        double? all = null; // the median takes a sort, and is seldom asked for
        for (var i = 0; i < raw.Length; i++)
        {
            if (double.IsFinite(raw[i])) continue;
            var (sum, count) = (0.0, 0);
            for (var k = i < Around ? i % 2 : i - Around; k <= Math.Min(raw.Length - 1, i + Around); k += 2)
            {
                if (!double.IsFinite(raw[k])) continue;
                sum += raw[k];
                count++;
            }

            filled[i] = count > 0 ? sum / count : all ??= Middle(raw);
        }

        return filled;
    }

    private static double Middle(double[] raw) =>
        Array.FindAll(raw, double.IsFinite) is { Length: > 0 } known ? Median.Of(known) : 0;

    private static double[] WithoutKinds(double[] values, bool[] known)
    {
        Span<double> sums = stackalloc double[Kinds];
        Span<int> counts = stackalloc int[Kinds];
        for (var i = 0; i < values.Length; i++)
        {
            if (!known[i]) continue;
            sums[i % Kinds] += values[i];
            counts[i % Kinds]++;
        }

        var rest = new double[values.Length];
        for (var i = 0; i < rest.Length; i++) rest[i] = values[i] - sums[i % Kinds] / Math.Max(1, counts[i % Kinds]);
        return rest;
    }

    private static double[] WithoutTrend(double[] values, int half)
    {
        var rest = new double[values.Length];
        for (var i = half; i < values.Length - half; i++)
        {
            rest[i] = values[i];
            for (var k = -half; k <= half; k++) rest[i] -= Weight(k, half) * values[i + k];
        }

        return rest;
    }

    /// <summary>The weights of the local parabola's middle: Savitzky and Golay 1964.</summary>
    private static double Weight(int k, int half) =>
        3.0 * (3 * half * half + 3 * half - 1 - 5 * k * k) / ((2 * half - 1) * (2 * half + 1) * (2 * half + 3));

    /// <summary>
    /// Takes away what comes so many times in a turn, one wave after the other, twice, since they are not quite square.
    /// </summary>
    private static void WithoutTurns(double[] values, int edge, int teeth)
    {
        for (var round = 0; round < 2; round++)
        {
            for (var h = 1; h <= Harmonics && 2 * h < teeth; h++) SpeedWave.TakeAway(values, edge, 2 * Math.PI * h / teeth);
        }
    }
}
