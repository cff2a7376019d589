using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Learning;

/// <summary>Trains the fleet model.</summary>
public static class FleetTraining
{
    /// <summary>Chains that it takes: from ten a fitted prior is worse than the broad one, from thirty on it is better.</summary>
    public const int FewestChains = 30;

    /// <summary>Where no two chains start more alike than this, in percent: the least spread that is believed.</summary>
    private const double LeastStartDeviationPercent = 0.05;

    /// <summary>Trees may narrow the prior, but not to less than this share of the variance without them.</summary>
    private const double LeastVarianceScale = 0.1;

    /// <summary>
    /// Trains on all chains of the plant. The same chains in the same order and the same seed give the same model.
    /// </summary>
    /// <param name="chains">Fitted chains, finished and running.</param>
    /// <param name="seed">For the folds of the cross-validation and the trees.</param>
    public static FleetTrainingOutcome Train(IReadOnlyList<FleetChain> chains, int seed)
    {
        var rates = chains.Select(chain => (Chain: chain, Rate: ChainRate.Of(chain.Observations))).ToArray();
        RateSample[] samples =
        [
            .. from rate in rates
               let shown = rate.Rate as ChainRate.Shown
               where shown is not null
               select new RateSample(rate.Chain.Card, shown.LogRate, shown.StandardError)
        ];
        if (samples.Length < FewestChains) return new FleetTrainingOutcome.TooFewChains(samples.Length, FewestChains);

        var ml = FleetPipeline.Context(seed);
        var trials = InputTrial.Of(samples, seed);
        var line = LogLinearRate.Fit(samples, trials.Inputs);
        var validation = CrossValidation.Run(ml, samples, trials.Inputs, line.TauSquared, seed);
        var trees = validation.TreesWin ? FleetPipeline.FitTrees(ml, line, samples, seed) : null;
        var errors = trees is null ? validation.LineErrors : validation.TreeErrors!;
        var (start, startDeviation) = Start([
            .. rates.Where(r => r.Chain.FittingKnown).Select(r => r.Rate).OfType<ChainRate.Shown>().Select(r => r.StartPercent)
        ]);
        var statistics = new FleetStatistics
        {
            Line = line,
            UsesTrees = trees is not null,
            Chains = samples.Length,
            VarianceScale = Math.Max(trees is null ? 1 : LeastVarianceScale, validation.SpreadOverExpected(errors)),
            ConformalHalfWidth90 = ConformalHalfWidth(errors),
            StartPercent = start,
            StartDeviationPercent = startDeviation,
        };
        var skipped = rates.Select(r => r.Rate).OfType<ChainRate.NotShown>().CountBy(r => r.Why).ToDictionary();
        return new FleetTrainingOutcome.Trained(
            new FleetModel(statistics, ml, FleetPipeline.Build(ml, line, trees)),
            Report(statistics, validation, [.. samples.Select(s => line.Design.Row(s.Card))], skipped) with
            {
                Trials = trials.Trials,
            });
    }

    /// <summary>
    /// Where a new chain's straight part starts; as without a fleet where too few chains are known from their fitting.
    /// </summary>
    private static (double Percent, double DeviationPercent) Start(double[] starts) => starts.Length < FewestChains
        ? (WearPrior.Broad.MeanStartPercent, WearPrior.Broad.StandardDeviationStartPercent)
        : (Median.Of(starts), Math.Max(Median.Deviation(starts), LeastStartDeviationPercent));

    /// <summary>
    /// The 90 % quantile of unseen chains' absolute errors, one up for the chain to come: <c>ceil(0.9 (n + 1))</c>-th of n.
    /// </summary>
    private static double ConformalHalfWidth(double[] errors)
    {
        double[] sorted = [.. errors.Select(Math.Abs).Order()];
        return sorted[Math.Min((int)Math.Ceiling(0.9 * (sorted.Length + 1)), sorted.Length) - 1];
    }

    private static FleetModelReport Report(
        FleetStatistics statistics, CrossValidation validation, IReadOnlyList<double[]> rows,
        IReadOnlyDictionary<NoRateReason, int> skipped)
    {
        var line = statistics.Line;
        var width = line.Design.Width;
        return new FleetModelReport
        {
            ChainsUsed = statistics.Chains,
            ChainsSkipped = skipped,
            Folds = validation.Folds,
            MeanOnlyError = validation.RootMeanSquare(validation.MeanOnlyErrors),
            LineError = validation.RootMeanSquare(validation.LineErrors),
            LineAndTreesError = validation.TreeErrors is { } errors ? validation.RootMeanSquare(errors) : null,
            UsesTrees = statistics.UsesTrees,
            Tau = Math.Sqrt(line.TauSquared),
            LineDeviation = DeviationBetween(CommonOrigin.Line, line),
            LotDeviation = DeviationBetween(CommonOrigin.Lot, line),
            SpreadOverExpected = validation.SpreadOverExpected(validation.LineErrors),
            ConformalHalfWidth90 = statistics.ConformalHalfWidth90,
            Effects =
            [
                .. line.Design.ColumnNames.Zip(line.Design.ColumnOrigins, (name, origin) => (name, origin)).Select((column, i) =>
                    new LearnedEffect(column.name, line.Coefficients[i], Math.Sqrt(line.Covariance[i * width + i]))
                    {
                        Origin = column.origin.What,
                        Member = column.origin.Member,
                        Chains = i < line.Design.FirstOrigin ? null : rows.Count(row => row[i] == 1),
                    })
            ],
            LearningCurve = [.. validation.LearningCurve()],
        };
    }

    private static double DeviationBetween(string what, LogLinearRate line) =>
        Math.Sqrt(line.Design.Origins.Zip(line.OriginVariances).Where(o => o.First.What == what).Sum(o => o.Second));
}
