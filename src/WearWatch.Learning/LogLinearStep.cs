using Microsoft.ML.Transforms;

namespace WearWatch.Learning;

/// <summary>
/// The log-linear part as a step of the pipeline: the very function that the direct evaluation calls, so that their bits agree.
/// </summary>
/// <remarks>
/// No trainer that ML.NET ships here solves least squares: its stochastic descent stops three or four digits away, in single
/// precision. The step has no state of its own; the coefficients are a column, looked up by the step before. The contract's name
/// stands in saved models.
/// </remarks>
[CustomMappingFactoryAttribute(Contract)]
internal sealed class LogLinearStep : CustomMappingFactory<LogLinearStepInput, LogLinearStepOutput>
{
    public const string Contract = "WearWatch.LogLinearStep.v1";

    public static void Map(LogLinearStepInput input, LogLinearStepOutput output) =>
        output.LineLogRate = LogLinearRate.Dot(input.Coefficients, input.Row);

    public override Action<LogLinearStepInput, LogLinearStepOutput> GetMapping() => Map;
}
