using Microsoft.ML.Data;

namespace WearWatch.Learning;

/// <summary>Coefficients and row side by side, as the log-linear step reads them.</summary>
internal sealed class LogLinearStepInput
{
    [VectorType]
    public double[] Coefficients { get; set; } = [];

    [VectorType]
    public double[] Row { get; set; } = [];
}
