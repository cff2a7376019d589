using Microsoft.ML.Data;

namespace WearWatch.Learning;

/// <summary>A chain's line, as numbers, and the hours at which it is asked for.</summary>
internal sealed class FleetTrendInput
{
    [VectorType]
    public double[] Line { get; set; } = [];

    public double Hours { get; set; }
}
