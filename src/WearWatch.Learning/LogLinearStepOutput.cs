namespace WearWatch.Learning;

/// <summary>What the log-linear step answers.</summary>
internal sealed class LogLinearStepOutput
{
    public double LineLogRate { get; set; }
}
