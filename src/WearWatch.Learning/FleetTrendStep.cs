using Microsoft.ML.Transforms;
using WearWatch.Trends;

namespace WearWatch.Learning;

/// <summary>A chain's own line at some hours, as a step of the pipeline. The contract's name stands in saved models.</summary>
[CustomMappingFactoryAttribute(Contract)]
internal sealed class FleetTrendStep : CustomMappingFactory<FleetTrendInput, TrendPoint>
{
    public const string Contract = "WearWatch.FleetTrendStep.v1";

    public static double[] Pack(StraightLine line) =>
        [line.MeanX, line.MeanY, line.Slope, line.SumSquaresX, line.SumWeights, line.ResidualVariance];

    public static void Map(FleetTrendInput input, TrendPoint output)
    {
        // A chain that was not among those fitted has no line: the lookup then gives nothing, or zeros.
        if (input.Line is not [var meanX, var meanY, var slope, var sumSquaresX, var sumWeights, var residualVariance] || !(sumWeights > 0))
        {
            output.TrendPercent = output.TrendStandardErrorPercent = double.NaN;
            return;
        }

        var line = new StraightLine
        {
            MeanX = meanX,
            MeanY = meanY,
            Slope = slope,
            SumSquaresX = sumSquaresX,
            SumWeights = sumWeights,
            ResidualVariance = residualVariance,
            DegreesOfFreedom = 0,
            RSquared = double.NaN,
        };
        output.TrendPercent = line.At(input.Hours);
        output.TrendStandardErrorPercent = line.StandardErrorAt(input.Hours);
    }

    public override Action<FleetTrendInput, TrendPoint> GetMapping() => Map;
}
