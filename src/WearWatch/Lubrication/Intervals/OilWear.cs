using WearWatch.Wear;

namespace WearWatch.Lubrication.Intervals;

/// <summary>One chain's readings boiled down to the sums from which any effect of the oil's age can be judged.</summary>
/// <remarks>
/// Model of the elongation at reading i of one chain: <c>y_i = a + r (H_i + b X_i) + e_i</c>, with H thousand running hours, X
/// thousand hours weighted by a rise with the oil's age (<see cref="AgeShape"/>), a and r the chain's own. Errors: the reading's
/// scatter, and wear that is uneven and whose rate wanders, <c>V_ij = s_i^2 [i = j] + r^2 (eta m + q m^2 (3 M - m) / 6)</c>, m
/// and M the smaller and larger hours of the two. The Cholesky factor of V whitens y, H, X and the constant; the constant is
/// projected out. What is left of a chain is
/// <c>RSS(b) = yy - (yH + b yX)^2 / (HH + 2 b HX + b^2 XX)</c>: its own rate r cancels, so that what makes one chain wear faster
/// than another, load or dust or a bad place, cannot pose as an effect of oil.
/// </remarks>
internal sealed class OilWear
{
    private readonly double yy, yH, hh;
    private readonly double[] yX, hX, xX;

    private OilWear(double[] y, double[] h, double[][] x, double[] risen, double thousandHours)
    {
        (yy, yH, hh) = (Dot(y, y), Dot(y, h), Dot(h, h));
        yX = [.. x.Select(v => Dot(y, v))];
        hX = [.. x.Select(v => Dot(h, v))];
        xX = [.. x.Select(v => Dot(v, v))];
        (RisenThousandHours, ThousandHours, Readings) = (risen, thousandHours, y.Length);
        Precision = 1 / ResidualScale();
    }

    /// <summary>Thousand running hours from the first to the last reading.</summary>
    public double ThousandHours { get; }

    /// <summary>
    /// Thousand running hours from the first to the last reading, weighted by each shape of rise with the oil's age.
    /// </summary>
    public double[] RisenThousandHours { get; }

    public int Readings { get; }

    /// <summary>What a square of this chain's residuals is worth: less where they are larger than its errors foresee.</summary>
    public double Precision { get; }

    /// <summary>Wear rate over all, in percent per 1,000 running hours.</summary>
    public double Rate => yH / hh;

    /// <summary>The sums of a chain.</summary>
    /// <param name="readings">Its usable readings.</param>
    /// <param name="ages">The age of its oil.</param>
    /// <param name="wear">How wear wanders.</param>
    /// <param name="shapes">The shapes in which it may rise.</param>
    public static OilWear Of(
        IReadOnlyList<Observation> readings, OilAges ages, WearConstants wear, IReadOnlyList<AgeShape> shapes)
    {
        var n = readings.Count;
        var start = readings[0].HoursSinceFitting;
        double[] h = [.. readings.Select(o => (o.HoursSinceFitting - start) / 1000)];
        double[][] x = [.. shapes.Select(_ => new double[n])];
        for (var i = 1; i < n; i++)
        {
            var (from, to) = (readings[i - 1].HoursSinceFitting, readings[i].HoursSinceFitting);
            for (var k = 0; k < x.Length; k++) x[k][i] = x[k][i - 1] + ages.Sum(from, to, shapes[k].Integral) / 1000;
        }

        double[] y = [.. readings.Select(o => o.ElongationPercent)];
        double[] risen = [.. x.Select(v => v[^1])];
        Whiten(readings, h, Math.Max((y[^1] - y[0]) / h[^1], 0), wear, [y, (double[])h.Clone(), .. x], out var whitened);
        return new OilWear(whitened[0], whitened[1], whitened[2..], risen, h[^1]);
    }

    /// <summary>Sum of squares of what an effect b leaves unexplained, for the shape of that index.</summary>
    public double Unexplained(double b, int shape)
    {
        var along = yH + b * yX[shape];
        return yy - along * along / (hh + b * (2 * hX[shape] + b * xX[shape]));
    }

    /// <summary>Residual variance over the foreseen, of the freest line, drawn towards 1 as by four readings more.</summary>
    private double ResidualScale()
    {
        const double foreseen = 4;
        var explained = yX.Select((_, k) => Explained(k)).Max();
        return (Math.Max(yy - explained, 0) + foreseen) / (Math.Max(Readings - 3, 0) + foreseen);
    }

    /// <summary>
    /// Sum of squares that H and a shape explain when both are free; H alone where the shape runs along with it.
    /// </summary>
    private double Explained(int k)
    {
        var determinant = hh * xX[k] - hX[k] * hX[k];
        return determinant > 1e-12 * hh * xX[k]
            ? (xX[k] * yH * yH - 2 * hX[k] * yH * yX[k] + hh * yX[k] * yX[k]) / determinant
            : yH * yH / hh;
    }

    private static void Whiten(
        IReadOnlyList<Observation> readings, double[] h, double rate, WearConstants wear, double[][] columns,
        out double[][] whitened)
    {
        var factor = Cholesky(readings, h, rate, wear);
        whitened = [.. columns.Select(c => Solve(factor, c))];
        var one = Solve(factor, [.. Enumerable.Repeat(1.0, h.Length)]);
        var size = Dot(one, one);
        foreach (var column in whitened)
        {
            var along = Dot(column, one) / size;
            for (var i = 0; i < column.Length; i++) column[i] -= along * one[i];
        }
    }

    private static double[,] Cholesky(IReadOnlyList<Observation> readings, double[] h, double rate, WearConstants wear)
    {
        var n = h.Length;
        var l = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var uneven = wear.UnevenWear * h[j] + wear.RateDrift * h[j] * h[j] * (3 * h[i] - h[j]) / 6;
                var scatter = i == j ? readings[i].ScatterPercent * readings[i].ScatterPercent : 0;
                var sum = scatter + rate * rate * uneven;
                for (var k = 0; k < j; k++) sum -= l[i, k] * l[j, k];
                l[i, j] = i == j ? Math.Sqrt(sum) : sum / l[j, j];
            }
        }

        return l;
    }

    private static double[] Solve(double[,] l, double[] right)
    {
        var solved = (double[])right.Clone();
        for (var i = 0; i < solved.Length; i++)
        {
            for (var k = 0; k < i; k++) solved[i] -= l[i, k] * solved[k];
            solved[i] /= l[i, i];
        }

        return solved;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
