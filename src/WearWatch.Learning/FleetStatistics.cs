namespace WearWatch.Learning;

/// <summary>What a fleet model keeps beside its pipeline.</summary>
internal sealed record FleetStatistics
{
    /// <summary>The log-linear part.</summary>
    public required LogLinearRate Line { get; init; }

    /// <summary>Whether trees were added.</summary>
    public required bool UsesTrees { get; init; }

    /// <summary>Chains that it learned from.</summary>
    public required int Chains { get; init; }

    /// <summary>
    /// What the variances are multiplied by, so that unseen chains lie as far off as they say: at least 1, but for trees.
    /// </summary>
    public required double VarianceScale { get; init; }

    /// <summary>Half width of the 90 % interval of ln rate, from chains that the model had not seen.</summary>
    public required double ConformalHalfWidth90 { get; init; }

    /// <summary>Median of where the chains' straight parts start, in percent.</summary>
    public required double StartPercent { get; init; }

    /// <summary>Robust standard deviation of it, in percent.</summary>
    public required double StartDeviationPercent { get; init; }
}
