namespace WearWatch.Learning;

/// <summary>What the trend's pipeline answers: a chain's line at some hours.</summary>
public sealed class TrendPoint
{
    /// <summary>Elongation on the line, in percent; NaN for a chain without a line.</summary>
    public double TrendPercent { get; set; }

    /// <summary>Standard error of the line there, in percent; NaN where two readings only gave it.</summary>
    public double TrendStandardErrorPercent { get; set; }
}
