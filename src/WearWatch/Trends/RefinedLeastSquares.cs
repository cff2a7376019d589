namespace WearWatch.Trends;

/// <summary>A least-squares system that is factored once and solved with corrections in twice the precision.</summary>
internal sealed class RefinedLeastSquares
{
    private readonly double[][] scaled;
    private readonly double[] scales;
    private readonly HouseholderQr qr;

    /// <summary>Takes the columns of the matrix.</summary>
    public RefinedLeastSquares(IReadOnlyList<double[]> columns)
    {
        scales = [.. columns.Select(PowerOfTwoNearLength)];
        scaled = [.. columns.Zip(scales, (column, scale) => column.Select(v => v / scale).ToArray())];
        qr = new HouseholderQr(scaled);

        // After scaling every column has a length between 1/2 and 2.
        IsDetermined = qr.Diagonal.All(d => Math.Abs(d) > 1e-14 * columns.Count);
    }

    /// <summary>Whether the columns are told apart.</summary>
    public bool IsDetermined { get; }

    /// <summary>Solution and residuals for a right-hand side.</summary>
    public (double[] Solution, double[] Residuals) Solve(double[] right, int mostRefinements)
    {
        var solution = new double[scaled.Length];
        var residuals = new double[right.Length];
        var last = double.PositiveInfinity;
        for (var round = 0; round <= mostRefinements; round++)
        {
            var (correction, residualCorrection) = Correct(right, solution, residuals);
            var size = Length(correction);

            // Not smaller any more: the corrections are rounding noise now.
            if (round > 1 && !(size < 0.5 * last)) break;
            for (var j = 0; j < solution.Length; j++) solution[j] += correction[j];
            for (var i = 0; i < residuals.Length; i++) residuals[i] += residualCorrection[i];
            if (size == 0) break;
            last = size;
        }

        for (var j = 0; j < solution.Length; j++) solution[j] /= scales[j];
        return (solution, residuals);
    }

    /// <summary>(A'A)^-1, row by row.</summary>
    public double[] InverseOfSquare()
    {
        var width = scaled.Length;
        var inverse = new double[width * width];
        for (var j = 0; j < width; j++)
        {
            var unit = new double[width];
            unit[j] = 1;
            var column = qr.SolveUpper(qr.SolveUpperTransposed(unit));
            for (var i = 0; i < width; i++) inverse[i * width + j] = column[i] / (scales[i] * scales[j]);
        }

        return inverse;
    }

    private (double[] Solution, double[] Residuals) Correct(double[] right, double[] solution, double[] residuals)
    {
        var width = scaled.Length;
        var f = new double[right.Length];
        for (var i = 0; i < f.Length; i++)
        {
            var sum = default(CompensatedSum);
            sum.Add(right[i]);
            sum.Add(-residuals[i]);
            for (var j = 0; j < width; j++) sum.Add(-scaled[j][i], solution[j]);
            f[i] = sum.Value;
        }

        var g = new double[width];
        for (var j = 0; j < width; j++)
        {
            var sum = default(CompensatedSum);
            for (var i = 0; i < f.Length; i++) sum.Add(-scaled[j][i], residuals[i]);
            g[j] = sum.Value;
        }

        var h = qr.SolveUpperTransposed(g);
        qr.ApplyTransposed(f);
        var top = new double[width];
        for (var j = 0; j < width; j++) top[j] = f[j] - h[j];
        h.CopyTo(f, 0);
        qr.Apply(f);
        return (qr.SolveUpper(top), f);
    }

    private static double PowerOfTwoNearLength(double[] column)
    {
        var length = Length(column);
        return length > 0 ? Math.ScaleB(1, Math.ILogB(length)) : 1;
    }

    private static double Length(ReadOnlySpan<double> values)
    {
        var squares = 0.0;
        foreach (var value in values) squares += value * value;
        return Math.Sqrt(squares);
    }
}
