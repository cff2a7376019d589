using MathNet.Numerics.LinearAlgebra;

namespace WearWatch.Learning;

/// <summary>
/// One weighted ridge regression with given weights: coefficients, their covariance, and how likely the readings are under it.
/// </summary>
/// <remarks>
/// <c>(X'WX + P) beta = X'W y</c> by Cholesky; columns are centred and at most a few tens, so that the normal equations lose
/// nothing that matters beside tau. The covariance is the inverse, since the weights are true precisions. Log likelihood with the
/// penalised coefficients integrated out, up to a constant:
/// <c>-1/2 (sum ln v + ln det(X'WX + P) - ln det P + y'W(y - X beta))</c>.
/// </remarks>
internal sealed class RidgeSolution
{
    private RidgeSolution(
        IReadOnlyList<double[]> rows, IReadOnlyList<double> values, IReadOnlyList<double> variances,
        IReadOnlyList<double> penalties)
    {
        var width = penalties.Count + 1;
        var square = new double[width * width];
        var right = Vector<double>.Build.Dense(width);
        double sumLogVariance = 0, weightedSquares = 0;
        for (var s = 0; s < values.Count; s++)
        {
            var (value, row, variance) = (values[s], rows[s], variances[s]);
            sumLogVariance += Math.Log(variance);
            weightedSquares += value * value / variance;
            for (var i = 0; i < width; i++)
            {
                if (row[i] == 0) continue;
                var weighted = row[i] / variance;
                right[i] += weighted * value;
                for (var j = 0; j <= i; j++) square[i * width + j] += weighted * row[j];
            }
        }

        var normal = Matrix<double>.Build.Dense(width, width, (i, j) => i >= j ? square[i * width + j] : square[j * width + i]);
        var penalised = normal.Clone();
        for (var i = 1; i < width; i++) penalised[i, i] += penalties[i - 1];

        var cholesky = penalised.Cholesky();
        var beta = cholesky.Solve(right);
        var inverse = cholesky.Solve(Matrix<double>.Build.DenseIdentity(width));
        Coefficients = beta.ToArray();
        Covariance = inverse.ToRowMajorArray();
        EffectiveCoefficients = (inverse * normal).Trace();
        LogLikelihood =
            -0.5 * (sumLogVariance + cholesky.DeterminantLn - penalties.Sum(Math.Log) + weightedSquares - beta.DotProduct(right));
    }

    /// <summary>A coefficient for each column: the constant's first.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Covariance of the coefficients, row by row.</summary>
    public IReadOnlyList<double> Covariance { get; }

    /// <summary>
    /// Trace of the matrix that takes what was seen to what is fitted: how many coefficients the penalties leave free.
    /// </summary>
    public double EffectiveCoefficients { get; }

    /// <summary>Log likelihood of the values, up to a constant; without meaning when a penalty is zero.</summary>
    public double LogLikelihood { get; }

    /// <summary>Solves for a fleet's ln rates.</summary>
    /// <param name="fleet">The chains with their rows.</param>
    /// <param name="previous">The round before: its coefficients and its tau give the weights.</param>
    /// <param name="originVariances">
    /// Variance of ln rate between lines and between lots, one for each of the design's origins.
    /// </param>
    public static RidgeSolution Of(DesignedFleet fleet, LogLinearRate previous, IReadOnlyList<double> originVariances)
    {
        var design = fleet.Design;
        return Solve(
            fleet.Rows,
            [.. fleet.Samples.Select(s => s.LogRate)],
            [.. fleet.Samples.Select((_, s) => fleet.KnownVariance(s, previous.Coefficients) + previous.TauSquared)],
            [
                .. Enumerable.Repeat(LogLinearRate.EffectPenalty, design.FirstOrigin - 1),
                .. design.Origins.Zip(originVariances).SelectMany(o => Enumerable.Repeat(1 / o.Second, o.First.Width))
            ]);
    }

    /// <summary>Solves a system.</summary>
    /// <param name="rows">A row for each value; its first entry is the constant's, 1.</param>
    /// <param name="values">What the rows are to explain.</param>
    /// <param name="variances">Variance of each value, above zero.</param>
    /// <param name="penalties">Penalty on the square of each coefficient but the constant; zero leaves it free.</param>
    public static RidgeSolution Solve(
        IReadOnlyList<double[]> rows, IReadOnlyList<double> values, IReadOnlyList<double> variances,
        IReadOnlyList<double> penalties) =>
        new(rows, values, variances, penalties);
}
