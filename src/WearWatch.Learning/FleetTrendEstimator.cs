using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Transforms;
using WearWatch.Trends;

namespace WearWatch.Learning;

/// <summary>Every chain's trend in one ML.NET model: lines by exact least squares, looked up by the chain's name.</summary>
/// <remarks>A model a chain would be ten thousand files; this is one. A chain whose readings determine no line is answered with NaN.</remarks>
/// <param name="ml">The context; loading needs one from <see cref="Context"/>.</param>
public sealed class FleetTrendEstimator(MLContext ml) : IEstimator<ITransformer>
{
    /// <summary>A context that can load such a model.</summary>
    public static MLContext Context(int seed) => FleetPipeline.Context(seed);

    /// <summary>Fits a line to each chain's rows.</summary>
    public ITransformer Fit(IDataView input)
    {
        var rows = ml.Data.CreateEnumerable<TrendObservation>(input, reuseRowObject: false);
        var lines =
            from chain in rows.GroupBy(r => r.Chain, StringComparer.Ordinal)
            let fit = StraightLine.Fit(
                [.. chain.Select(r => r.Hours)], [.. chain.Select(r => r.ElongationPercent)], [.. chain.Select(r => r.Weight)])
            let fitted = fit as TrendFit<StraightLine>.Fitted
            where fitted is not null
            select new KeyValuePair<string, double[]>(chain.Key, FleetTrendStep.Pack(fitted.Trend));
        return Lookup(lines).Fit(input);
    }

    /// <inheritdoc/>
    public SchemaShape GetOutputSchema(SchemaShape inputSchema) => Lookup([]).GetOutputSchema(inputSchema);

    private EstimatorChain<CustomMappingTransformer<FleetTrendInput, TrendPoint>> Lookup(IEnumerable<KeyValuePair<string, double[]>> lines) =>
        ml.Transforms.Conversion.MapValue<string, double>(nameof(FleetTrendInput.Line), lines, nameof(TrendObservation.Chain))
            .Append(ml.Transforms.CustomMapping<FleetTrendInput, TrendPoint>(FleetTrendStep.Map, FleetTrendStep.Contract));
}
