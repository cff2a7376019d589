using MathNet.Numerics.LinearAlgebra;

namespace WearWatch.Learning;

/// <summary>One weighted ridge regression with given weights: coefficients, their covariance, and how likely the readings are under it.</summary>
/// <remarks>
/// <c>(X'WX + P) beta = X'W y</c> by Cholesky; columns are centred and at most a few tens, so that the normal equations lose nothing
/// that matters beside tau. The covariance is the inverse, since the weights are true precisions. Log likelihood with the
/// penalised coefficients integrated out, up to a constant:
/// <c>-1/2 (sum ln v + ln det(X'WX + P) - ln det P + y'W(y - X beta))</c>.
/// </remarks>
internal sealed class RidgeSolution
{
    public RidgeSolution(DesignedFleet fleet, LogLinearRate previous, IReadOnlyList<double> originVariances)
    {
        var design = fleet.Design;
        var width = design.Width;
        var square = new double[width * width];
        var right = Vector<double>.Build.Dense(width);
        double sumLogVariance = 0, weightedSquares = 0;
        for (var s = 0; s < fleet.Samples.Count; s++)
        {
            var (sample, row) = (fleet.Samples[s], fleet.Rows[s]);
            var variance = fleet.KnownVariance(s, previous.Coefficients) + previous.TauSquared;
            sumLogVariance += Math.Log(variance);
            weightedSquares += sample.LogRate * sample.LogRate / variance;
            for (var i = 0; i < width; i++)
            {
                if (row[i] == 0) continue;
                var weighted = row[i] / variance;
                right[i] += weighted * sample.LogRate;
                for (var j = 0; j <= i; j++) square[i * width + j] += weighted * row[j];
            }
        }

        var normal = Matrix<double>.Build.Dense(width, width, (i, j) => i >= j ? square[i * width + j] : square[j * width + i]);
        var penalised = normal.Clone();
        var logPenalties = 0.0;
        double[] penalties =
        [
            .. Enumerable.Repeat(LogLinearRate.EffectPenalty, design.FirstOrigin - 1),
            .. design.Origins.Zip(originVariances).SelectMany(o => Enumerable.Repeat(1 / o.Second, o.First.Width))
        ];
        for (var i = 1; i < width; i++)
        {
            var penalty = penalties[i - 1];
            penalised[i, i] += penalty;
            logPenalties += Math.Log(penalty);
        }

        var cholesky = penalised.Cholesky();
        var beta = cholesky.Solve(right);
        var inverse = cholesky.Solve(Matrix<double>.Build.DenseIdentity(width));
        Coefficients = beta.ToArray();
        Covariance = inverse.ToRowMajorArray();
        EffectiveCoefficients = (inverse * normal).Trace();
        LogLikelihood = -0.5 * (sumLogVariance + cholesky.DeterminantLn - logPenalties + weightedSquares - beta.DotProduct(right));
    }

    public IReadOnlyList<double> Coefficients { get; }

    public IReadOnlyList<double> Covariance { get; }

    /// <summary>Trace of the matrix that takes what was seen to what is fitted: how many coefficients the penalties leave free.</summary>
    public double EffectiveCoefficients { get; }

    public double LogLikelihood { get; }
}
