namespace WearWatch.Learning;

/// <summary>
/// What the fleet's pipeline reads of a chain. The width of the row is known only when the fleet is: see
/// <see cref="FleetPipeline"/>.
/// </summary>
internal sealed class FleetExample
{
    /// <summary>The key under which the pipeline keeps its coefficients.</summary>
    public const string LogLinear = "log-linear";

    public string Part { get; set; } = LogLinear;

    public double[] Row { get; set; } = [];
}
