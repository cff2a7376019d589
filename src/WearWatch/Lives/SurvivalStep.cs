namespace WearWatch.Lives;

/// <summary>What is known at one moment at which lives ended.</summary>
public readonly record struct SurvivalStep
{
    /// <summary>Running hours.</summary>
    public required double Hours { get; init; }

    /// <summary>Chains that had lasted that long.</summary>
    public required int AtRisk { get; init; }

    /// <summary>How many of them reached their limit then.</summary>
    public required int Failed { get; init; }

    /// <summary>How many of them are known no further.</summary>
    public required int Suspended { get; init; }

    /// <summary>Estimated share of chains that last longer, 0 to 1.</summary>
    public required double Surviving { get; init; }

    /// <summary>Greenwood's standard error of that share; not a number once no chain is left.</summary>
    public required double StandardError { get; init; }

    /// <summary>Nelson-Aalen estimate of the cumulative hazard.</summary>
    public required double CumulativeHazard { get; init; }
}
