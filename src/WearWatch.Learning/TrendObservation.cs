namespace WearWatch.Learning;

/// <summary>A reading as the trend's pipeline takes it.</summary>
public sealed class TrendObservation
{
    /// <summary>The chain's name.</summary>
    public string Chain { get; set; } = "";

    /// <summary>Running hours since fitting.</summary>
    public double Hours { get; set; }

    /// <summary>Elongation in percent.</summary>
    public double ElongationPercent { get; set; }

    /// <summary>Weight: one over the square of the reading's scatter, or 1.</summary>
    public double Weight { get; set; } = 1;
}
