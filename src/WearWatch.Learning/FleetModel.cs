using Microsoft.ML;
using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Learning;

/// <summary>
/// What the fleet teaches about a chain before its first reading: the wear rate that its card lets expect. Safe for many threads.
/// </summary>
public sealed class FleetModel
{
    /// <summary>Name of the input that the recorded oilings tell.</summary>
    public const string HoursSinceOiling = "hours since oiling";

    private readonly FleetStatistics statistics;
    private readonly MLContext ml;
    private readonly ITransformer pipeline;
    private readonly EnginePool engines;

    internal FleetModel(FleetStatistics statistics, MLContext ml, ITransformer pipeline)
    {
        (this.statistics, this.ml, this.pipeline) = (statistics, ml, pipeline);
        engines = new EnginePool(ml, pipeline, statistics.Line.Design.Width);
        Version = FleetVersion.Of(statistics, pipeline);
    }

    /// <summary>Names the model by its content: the same chains and seed give the same version, run after run.</summary>
    public string Version { get; }

    /// <summary>Chains that it learned from.</summary>
    public int Chains => statistics.Chains;

    /// <summary>Whether it has trees on top of the log-linear part.</summary>
    public bool UsesTrees => statistics.UsesTrees;

    /// <summary>Whether it looks at an input, such as <c>hours since oiling</c>.</summary>
    public bool Uses(string input) => statistics.Line.Design.Inputs.Any(i => i.Name == input);

    /// <summary>Half the width of the interval of ln rate that holds 90 % of further chains, by conformal prediction.</summary>
    public double ConformalHalfWidth90 => statistics.ConformalHalfWidth90;

    /// <summary>What is to be believed of a chain before its first reading.</summary>
    /// <remarks>What the card does not tell is taken as the fleet's average, and widens the prior.</remarks>
    public WearPrior PriorFor(ChainCard card) => new(
        ExpectedLogRate(card),
        statistics.VarianceScale * statistics.Line.Variance(card),
        statistics.StartPercent,
        statistics.StartDeviationPercent,
        SourceOf(card));

    /// <summary>Which of the card's inputs lie outside what the fleet has shown; there the prior is a guess.</summary>
    public IReadOnlyList<string> OutsideTrainingRange(ChainCard card) => statistics.Line.Design.OutsideTrainingRange(card);

    /// <summary>
    /// Why the prior of a card is what it is: the factors by which each input makes the chain wear faster than the average one.
    /// </summary>
    /// <remarks>Their product and <see cref="AverageRatePercentPer1000Hours"/> give the median of the prior.</remarks>
    public IReadOnlyList<RateFactor> Explain(ChainCard card)
    {
        var factors = statistics.Line.Factors(card);
        return UsesTrees
            ? [.. factors, new RateFactor("several together", true, Math.Exp(ExpectedLogRate(card) - LineLogRate(card)))]
            : factors;
    }

    /// <summary>Wear rate of the average chain: median, in percent per 1,000 running hours.</summary>
    public double AverageRatePercentPer1000Hours => Math.Exp(statistics.Line.Coefficients[0]);

    /// <summary>
    /// How the wear rate of a chain would change if its card told something else: another way of oiling, a size up.
    /// </summary>
    /// <remarks>
    /// What both cards share cancels out, the chain's own good or bad luck included, so that the change is better known than
    /// either rate. With trees the middle is that of the whole pipeline and the error that of the log-linear part.
    /// </remarks>
    public RateChange Change(ChainCard asItIs, ChainCard asItWouldBe) => new(
        ExpectedLogRate(asItWouldBe) - ExpectedLogRate(asItIs),
        Math.Sqrt(statistics.Line.VarianceOfDifference(asItIs, asItWouldBe)),
        OutsideTrainingRange(asItWouldBe));

    /// <summary>Saves the model: one file that <see cref="Load"/> reads.</summary>
    public void Save(Stream stream) => FleetModelFile.Write(stream, statistics, ml, pipeline);

    /// <summary>
    /// Loads a model; one that is damaged or of another make is refused with an <see cref="InvalidDataException"/>.
    /// </summary>
    public static FleetModel Load(Stream stream) => FleetModelFile.Read(stream);

    /// <summary>Mean of ln(wear rate in percent per 1,000 h) by the pipeline.</summary>
    internal double ExpectedLogRate(ChainCard card) =>
        engines.Predict(new FleetExample { Row = statistics.Line.Design.Row(card) });

    /// <summary>The log-linear part's mean, without pipeline and trees.</summary>
    internal double LineLogRate(ChainCard card) => statistics.Line.Expect(card);

    private Phrase SourceOf(ChainCard card)
    {
        var outside = OutsideTrainingRange(card);
        return outside.Count == 0
            ? Phrase.Of($"fleet model {Version} from {Chains} chains")
            : $"fleet model {Version} from {Chains} chains, outside its experience in {string.Join(", ", outside)}";
    }
}
