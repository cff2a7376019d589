using Microsoft.ML.Data;

namespace WearWatch.Learning;

/// <summary>What the fleet's pipeline reads of a chain. The width of the row is known only when the fleet is: see <see cref="FleetPipeline"/>.</summary>
internal sealed class FleetRow
{
    /// <summary>The key under which the pipeline keeps its coefficients.</summary>
    public const string LogLinear = "log-linear";

    public string Part { get; set; } = LogLinear;

    public double[] Row { get; set; } = [];
}

/// <summary>The same row with what the trees are to learn from it.</summary>
internal sealed class ResidualRow
{
    public double[] Row { get; set; } = [];

    public float Residual { get; set; }

    public float Weight { get; set; }
}

/// <summary>What the pipeline answers.</summary>
internal sealed class FleetRate
{
    public double LogRate { get; set; }
}

/// <summary>Coefficients and row side by side, as the log-linear step reads them.</summary>
internal sealed class LogLinearStepInput
{
    [VectorType]
    public double[] Coefficients { get; set; } = [];

    [VectorType]
    public double[] Row { get; set; } = [];
}

/// <summary>What the log-linear step answers.</summary>
internal sealed class LogLinearStepOutput
{
    public double LineLogRate { get; set; }
}
