using System.Diagnostics;
using System.Globalization;
using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Transforms;
using WearWatch.Trends;

namespace WearWatch.Learning;

/// <summary>One chain's trend as an ML.NET estimator: exact weighted least squares inside, native transformers out.</summary>
/// <remarks>
/// The trainers that ML.NET ships approximate least squares in single precision, and on a handful of readings their descent diverges. A
/// transformer of our own could not be saved, so the line goes into ML.NET's expression transformer, as text from which every double
/// comes back to the bit. For many chains at once see <see cref="FleetTrendEstimator"/>.
/// </remarks>
/// <param name="ml">The context.</param>
public sealed class ExactTrendEstimator(MLContext ml) : IEstimator<ITransformer>
{
    /// <summary>Fits the line through all rows.</summary>
    /// <exception cref="InvalidOperationException">The rows do not determine a line; ask <see cref="StraightLine.Fit"/> first.</exception>
    public ITransformer Fit(IDataView input)
    {
        double[] Column(string name) => [.. input.GetColumn<double>(name)];
        return StraightLine.Fit(
            Column(nameof(TrendObservation.Hours)),
            Column(nameof(TrendObservation.ElongationPercent)),
            Column(nameof(TrendObservation.Weight))) switch
        {
            TrendFit<StraightLine>.Fitted { Trend: var line } => Expressions(line).Fit(input),
            TrendFit<StraightLine>.Undetermined { Reason: var reason } => throw new InvalidOperationException(reason),
            _ => throw new UnreachableException(),
        };
    }

    /// <inheritdoc/>
    public SchemaShape GetOutputSchema(SchemaShape inputSchema) => Expressions(new StraightLine
    {
        MeanX = 0,
        MeanY = 0,
        Slope = 0,
        SumSquaresX = 1,
        SumWeights = 1,
        ResidualVariance = 0,
        DegreesOfFreedom = 1,
        RSquared = 0,
    }).GetOutputSchema(inputSchema);

    // Written in the order in which StraightLine computes, so that not even the last bit differs.
    private EstimatorChain<ExpressionTransformer> Expressions(StraightLine line)
    {
        var distance = $"(h - {Literal(line.MeanX)})";
        return ml.Transforms.Expression(
                nameof(TrendPoint.TrendPercent),
                $"(h) : {Literal(line.MeanY)} + {Literal(line.Slope)} * {distance}",
                nameof(TrendObservation.Hours))
            .Append(ml.Transforms.Expression(
                nameof(TrendPoint.TrendStandardErrorPercent),
                $"(h) : sqrt({Literal(line.ResidualVariance)} * ({Literal(1 / line.SumWeights)} + {distance} * {distance} / {Literal(line.SumSquaresX)}))",
                nameof(TrendObservation.Hours)));
    }

    /// <summary>A double as the expression language reads it back to the bit; the suffix keeps it from single precision.</summary>
    private static string Literal(double value) =>
        double.IsNaN(value) ? "(0d / 0d)" : string.Create(CultureInfo.InvariantCulture, $"({value:R}d)");
}
