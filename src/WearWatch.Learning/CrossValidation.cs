using Microsoft.ML;

namespace WearWatch.Learning;

/// <summary>What models say of chains that they have not seen: each chain's prediction by a model of the other folds.</summary>
internal sealed class CrossValidation
{
    /// <summary>Below this number of chains a leaf of 30 leaves no tree to speak of.</summary>
    public const int FewestChainsForTrees = 90;

    private static readonly int[] CurveSizes = [10, 20, 30, 50, 75, 100, 150, 200, 300, 500, 1000, 2000];

    private readonly RateSample[] samples;
    private readonly IReadOnlyList<DutyInput> inputs;
    private readonly double[] weights;

    private CrossValidation(RateSample[] samples, IReadOnlyList<DutyInput> inputs, double tauSquared)
    {
        (this.samples, this.inputs) = (samples, inputs);
        weights = [.. samples.Select(s => 1 / (s.StandardError * s.StandardError + tauSquared))];
        MeanOnlyErrors = new double[samples.Length];
        LineErrors = new double[samples.Length];
        Variances = new double[samples.Length];
        TreeErrors = samples.Length >= FewestChainsForTrees && FleetPipeline.CanGrowTrees ? new double[samples.Length] : null;
    }

    /// <summary>Number of folds: ten where five would leave too few chains to learn effects from.</summary>
    public int Folds => samples.Length < 100 ? 10 : 5;

    public double[] MeanOnlyErrors { get; }

    public double[] LineErrors { get; }

    public double[]? TreeErrors { get; }

    /// <summary>The variance of ln rate that the log-linear part gave each unseen chain.</summary>
    public double[] Variances { get; }

    /// <summary>
    /// Whether trees lower the squared error by more than one standard error of the difference: less may be luck.
    /// </summary>
    public bool TreesWin => TreeErrors is not null && IsClearlyLower(TreeErrors, LineErrors);

    /// <summary>
    /// Runs the folds. The chains' order is shuffled by the seed, so that neighbours on a list do not share a fold by rule.
    /// </summary>
    public static CrossValidation Run(
        MLContext ml, IReadOnlyList<RateSample> given, IReadOnlyList<DutyInput> inputs, double tauSquared, int seed)
    {
        var validation = new CrossValidation(Shuffle(given, seed), inputs, tauSquared);
        for (var fold = 0; fold < validation.Folds; fold++) validation.RunFold(ml, fold, seed);
        return validation;
    }

    /// <summary>Runs the folds for the log-linear part alone, as a trial of inputs.</summary>
    public static CrossValidation OfLine(
        IReadOnlyList<RateSample> given, IReadOnlyList<DutyInput> inputs, double tauSquared, int seed)
    {
        var validation = new CrossValidation(Shuffle(given, seed), inputs, tauSquared);
        for (var fold = 0; fold < validation.Folds; fold++)
            validation.JudgeLine(fold, LogLinearRate.Fit([.. validation.Others(fold)], inputs));
        return validation;
    }

    /// <summary>
    /// Whether squared errors lie below others of the same chains by more than one standard error of the difference.
    /// </summary>
    public bool IsClearlyLower(double[] errors, double[] thanErrors)
    {
        var total = weights.Sum();
        var gains = thanErrors.Zip(errors, (than, error) => than * than - error * error).ToArray();
        var mean = gains.Zip(weights, (g, w) => g * w).Sum() / total;
        var standardError = Math.Sqrt(gains.Zip(weights, (g, w) => w * w * (g - mean) * (g - mean)).Sum()) / total;
        return mean > standardError;
    }

    /// <summary>Root of the weighted mean square of errors: chains whose own rate is better known count more.</summary>
    public double RootMeanSquare(double[] errors) => Math.Sqrt(errors.Zip(weights, (e, w) => w * e * e).Sum() / weights.Sum());

    /// <summary>
    /// How far off unseen chains lay over what the model said: mean of <c>(error^2 - se^2) / variance</c>, 1 when it is honest.
    /// </summary>
    public double SpreadOverExpected(double[] errors) => samples
        .Select((s, i) => (errors[i] * errors[i] - s.StandardError * s.StandardError) / Variances[i]).Average();

    /// <summary>Error of the log-linear part against the number of chains that it learns from.</summary>
    public IEnumerable<LearningPoint> LearningCurve()
    {
        var most = samples.Length - (samples.Length + Folds - 1) / Folds;
        int[] sizes = [.. CurveSizes.Where(n => n < most), most];
        return sizes.Select(n => new LearningPoint(n, ErrorFrom(n)));
    }

    private double ErrorFrom(int chains)
    {
        var errors = new double[samples.Length];
        for (var fold = 0; fold < Folds; fold++)
        {
            var line = LogLinearRate.Fit([.. Others(fold).Take(chains)], inputs);
            foreach (var i in Members(fold)) errors[i] = samples[i].LogRate - line.Expect(samples[i].Card);
        }

        return RootMeanSquare(errors);
    }

    private void RunFold(MLContext ml, int fold, int seed)
    {
        RateSample[] others = [.. Others(fold)];
        var line = LogLinearRate.Fit(others, inputs);
        JudgeLine(fold, line);
        var mean = WeightedMean(others, line.TauSquared);
        var pipeline = TreeErrors is null ? null : FleetPipeline.Build(ml, line, FleetPipeline.FitTrees(ml, line, others, seed));
        var engines = pipeline is null ? null : new EnginePool(ml, pipeline, line.Design.Width);
        foreach (var i in Members(fold))
        {
            var sample = samples[i];
            MeanOnlyErrors[i] = sample.LogRate - mean;
            if (TreeErrors is not null)
                TreeErrors[i] = sample.LogRate - engines!.Predict(new FleetExample { Row = line.Design.Row(sample.Card) });
        }
    }

    private void JudgeLine(int fold, LogLinearRate line)
    {
        foreach (var i in Members(fold))
        {
            LineErrors[i] = samples[i].LogRate - line.Expect(samples[i].Card);
            Variances[i] = line.Variance(samples[i].Card);
        }
    }

    private IEnumerable<int> Members(int fold) => Enumerable.Range(0, samples.Length).Where(i => i % Folds == fold);

    private IEnumerable<RateSample> Others(int fold) => samples.Where((_, i) => i % Folds != fold);

    private static double WeightedMean(RateSample[] samples, double tauSquared)
    {
        var weights = samples.Select(s => 1 / (s.StandardError * s.StandardError + tauSquared)).ToArray();
        return samples.Zip(weights, (s, w) => w * s.LogRate).Sum() / weights.Sum();
    }

    private static RateSample[] Shuffle(IReadOnlyList<RateSample> given, int seed)
    {
        RateSample[] shuffled = [.. given];
        new Random(seed).Shuffle(shuffled);
        return shuffled;
    }
}
