namespace WearWatch.Lives;

/// <summary>What is known at one moment at which lives ended.</summary>
/// <param name="Hours">Running hours.</param>
/// <param name="AtRisk">Chains that had lasted that long.</param>
/// <param name="Failed">How many of them reached their limit then.</param>
/// <param name="Suspended">How many of them are known no further.</param>
/// <param name="Surviving">Estimated share of chains that last longer, 0 to 1.</param>
/// <param name="StandardError">Greenwood's standard error of that share; not a number once no chain is left.</param>
/// <param name="CumulativeHazard">Nelson-Aalen estimate of the cumulative hazard.</param>
public readonly record struct SurvivalStep(
    double Hours, int AtRisk, int Failed, int Suspended, double Surviving, double StandardError, double CumulativeHazard);
