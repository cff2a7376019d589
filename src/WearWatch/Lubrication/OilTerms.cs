using WearWatch.Chains;

namespace WearWatch.Lubrication;

/// <summary>What a plant says of its oiling: what its surroundings make of an interval, and what oiling and wear cost.</summary>
/// <remarks>
/// No published factor for dust, warmth or the maker's first oil was found, so that all are 1 until the plant sets them.
/// </remarks>
public sealed record OilTerms
{
    /// <summary>
    /// Surroundings count as warm above this: the upper edge of the oil table's ordinary band, docs/references.md [13].
    /// </summary>
    public const double WarmAboveC = 40;

    /// <summary>Nothing set.</summary>
    public static OilTerms Default { get; } = new();

    /// <summary>What moderate dust makes of an interval; 0.5 halves it.</summary>
    public double ModerateDustFactor { get; init; } = 1;

    /// <summary>What heavy dust makes of an interval.</summary>
    public double HeavyDustFactor { get; init; } = 1;

    /// <summary>What warm surroundings make of an interval.</summary>
    public double WarmFactor { get; init; } = 1;

    /// <summary>What the first interval after fitting, on the maker's oil, is of the others.</summary>
    public double FirstIntervalFactor { get; init; } = 1;

    /// <summary>An automatic lubricator that misses so many pulses while its chain runs is looked at.</summary>
    public double PulsesMissed { get; init; } = 3;

    /// <summary>Cost of one oiling of one chain, work and oil; null while it is not set.</summary>
    public double? CostOfOiling { get; init; }

    /// <summary>Cost of wearing out one chain, the new one and its fitting; null while it is not set.</summary>
    public double? CostOfChain { get; init; }

    /// <summary>What the surroundings of a chain make of its interval: its own factor, times dust, times warmth.</summary>
    public double SurroundingsOf(ChainCard card) => card.OilingSurroundingsFactor
        * card.Duty.Dust switch { DustLevel.Moderate => ModerateDustFactor, DustLevel.Heavy => HeavyDustFactor, _ => 1 }
        * (card.Duty.AmbientC > WarmAboveC ? WarmFactor : 1);
}
