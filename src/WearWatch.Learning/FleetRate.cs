namespace WearWatch.Learning;

/// <summary>What the pipeline answers.</summary>
internal sealed class FleetRate
{
    public double LogRate { get; set; }
}
