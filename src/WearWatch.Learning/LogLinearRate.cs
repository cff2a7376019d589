using WearWatch.Chains;
using WearWatch.Trends;

namespace WearWatch.Learning;

/// <summary>The log-linear part of the fleet model: ln rate as a weighted ridge regression on what the cards tell.</summary>
/// <remarks>
/// Weights <c>1 / (se^2 + tau^2 + u)</c>: se of the chain's own rate, tau the spread between chains that are alike on their
/// cards, u what the card leaves open. tau^2 is iterated: <c>max(mean of MAD^2 and variance of the residuals - mean se^2 - mean
/// u, 0.03) (1 + p/n)</c>, p the effective number of coefficients. Effects are held back by a penalty of 0.5, which a handful of
/// chains overcomes; those of lines and of lots by one over their own variance, chosen where the readings are likeliest.
/// </remarks>
internal sealed record LogLinearRate
{
    /// <summary>Penalty on the square of an effect: a prior standard deviation of 1.4 in ln rate.</summary>
    public const double EffectPenalty = 0.5;

    /// <summary>With fewer chains only the average is learned.</summary>
    public const int FewestChainsForEffects = 25;

    private const double LeastTauSquared = 0.03;
    private const int Rounds = 12;
    private static readonly double[] Variances = [0, 0.01, 0.02, 0.04, 0.08, 0.16, 0.32];

    /// <summary>How cards become rows.</summary>
    public required DutyDesign Design { get; init; }

    /// <summary>A coefficient for each column of the design.</summary>
    public required IReadOnlyList<double> Coefficients { get; init; }

    /// <summary>Posterior covariance of the coefficients, row by row.</summary>
    public required IReadOnlyList<double> Covariance { get; init; }

    /// <summary>Variance of ln rate between chains that are alike on their cards.</summary>
    public required double TauSquared { get; init; }

    /// <summary>Variance of ln rate between lines, and between lots: one for each of the design's origins.</summary>
    public required IReadOnlyList<double> OriginVariances { get; init; }

    /// <summary>Expected ln rate for a row of the design.</summary>
    /// <remarks>The order of the additions is part of the result's bits; the pipeline calls this same function.</remarks>
    public static double Dot(ReadOnlySpan<double> coefficients, ReadOnlySpan<double> row)
    {
        var sum = 0.0;
        for (var i = 0; i < coefficients.Length; i++) sum += coefficients[i] * row[i];
        return sum;
    }

    /// <summary>Expected ln rate of a chain.</summary>
    public double Expect(ChainCard card) => Dot([.. Coefficients], Design.Row(card));

    /// <summary>
    /// Variance of ln rate of a further chain: between like chains, of the coefficients, and through what the card leaves open.
    /// </summary>
    public double Variance(ChainCard card)
    {
        var row = Design.Row(card);
        var variance = TauSquared + Design.VarianceOfUntold(card, Coefficients);
        for (var i = 0; i < row.Length; i++)
        {
            for (var j = 0; j < row.Length; j++) variance += row[i] * Covariance[i * row.Length + j] * row[j];
        }

        return variance + Design.Origins.Zip(OriginVariances, (origin, between) => origin.PlaceOf(card) >= 0 ? 0 : between).Sum();
    }

    /// <summary>What each input of a card does to the rate.</summary>
    public IReadOnlyList<RateFactor> Factors(ChainCard card)
    {
        double[] row = Design.Row(card);
        double[] coefficients = [.. Coefficients];
        double Through(int first, int width) => Math.Exp(Dot(coefficients.AsSpan(first, width), row.AsSpan(first, width)));
        var factors = new List<RateFactor>();
        var column = 1;
        foreach (var input in Design.Inputs)
        {
            factors.Add(new RateFactor(input.Name, input.IsToldBy(card), Through(column, input.Width)));
            column += input.Width;
        }

        foreach (var origin in Design.Origins)
        {
            factors.Add(new RateFactor(origin.What, origin.PlaceOf(card) >= 0, Through(column, origin.Width)));
            column += origin.Width;
        }

        return factors;
    }

    /// <summary>Variance of the difference between what two cards let expect, by the coefficients alone.</summary>
    public double VarianceOfDifference(ChainCard one, ChainCard other)
    {
        var difference = Design.Row(other).Zip(Design.Row(one), (o, i) => o - i).ToArray();
        var variance = 0.0;
        for (var i = 0; i < difference.Length; i++)
        {
            for (var j = 0; j < difference.Length; j++)
                variance += difference[i] * Covariance[i * difference.Length + j] * difference[j];
        }

        return variance;
    }

    /// <summary>Fits the regression.</summary>
    /// <param name="samples">The chains that show a rate.</param>
    /// <param name="inputs">What of their cards it may depend on; all of it if not given.</param>
    public static LogLinearRate Fit(IReadOnlyList<RateSample> samples, IReadOnlyList<DutyInput>? inputs = null)
    {
        var design = samples.Count < FewestChainsForEffects
            ? new DutyDesign([], [])
            : DutyDesign.Of([.. samples.Select(s => s.Card)], inputs ?? DutyInput.All);
        var (model, logLikelihood) = Iterate(new DesignedFleet(samples, design with { Origins = [] }), [], startTauSquared: 0.3);
        foreach (var origin in design.Origins)
        {
            var fleet = new DesignedFleet(samples, design with { Origins = [.. model.Design.Origins, origin] });
            var variance = Variances.MaxBy(v => v == 0
                ? logLikelihood
                : RidgeSolution.Of(fleet, model, [.. model.OriginVariances, v]).LogLikelihood);
            if (variance > 0) (model, logLikelihood) = Iterate(fleet, [.. model.OriginVariances, variance], model.TauSquared);
        }

        return model;
    }

    private static (LogLinearRate Model, double LogLikelihood) Iterate(
        DesignedFleet fleet, IReadOnlyList<double> originVariances, double startTauSquared)
    {
        var model = new LogLinearRate
        {
            Design = fleet.Design,
            Coefficients = new double[fleet.Design.Width],
            Covariance = [],
            TauSquared = startTauSquared,
            OriginVariances = originVariances,
        };
        for (var round = 0; ; round++)
        {
            var solution = RidgeSolution.Of(fleet, model, originVariances);
            model = model with { Coefficients = solution.Coefficients, Covariance = solution.Covariance };
            if (round == Rounds) return (model, solution.LogLikelihood);
            model = model with { TauSquared = SpreadBetweenChains(fleet, solution) };
        }
    }

    private static double SpreadBetweenChains(DesignedFleet fleet, RidgeSolution solution)
    {
        double[] coefficients = [.. solution.Coefficients];
        double[] residuals = [.. fleet.Samples.Zip(fleet.Rows, (sample, row) => sample.LogRate - Dot(coefficients, row))];
        var mean = residuals.Average();
        var variance = residuals.Average(r => (r - mean) * (r - mean));
        var robust = Median.Deviation(residuals);
        var known = Enumerable.Range(0, residuals.Length).Average(i => fleet.KnownVariance(i, coefficients));
        return Math.Max(0.5 * (variance + robust * robust) - known, LeastTauSquared)
            * (1 + solution.EffectiveCoefficients / residuals.Length);
    }
}
