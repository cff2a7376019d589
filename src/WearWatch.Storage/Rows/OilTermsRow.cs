using WearWatch.Lubrication;

namespace WearWatch.Storage.Rows;

/// <summary>What oiling costs the plant, and what its surroundings make of an interval; one row.</summary>
public sealed class OilTermsRow
{
    public int Id { get; init; }

    /// <summary>
    /// Cost of one oiling of one chain, work and oil, in the plant's money; null while the plant has not set it.
    /// </summary>
    public double? CostOfOiling { get; set; }

    /// <summary>Cost of wearing out one chain: the new chain and its fitting; null while the plant has not set it.</summary>
    public double? CostOfChain { get; set; }

    /// <summary>What moderate dust makes of an interval.</summary>
    public double ModerateDustFactor { get; set; } = 1;

    /// <summary>What heavy dust makes of an interval.</summary>
    public double HeavyDustFactor { get; set; } = 1;

    /// <summary>What warm surroundings, above 40 degrees Celsius, make of an interval.</summary>
    public double WarmFactor { get; set; } = 1;

    /// <summary>What the first interval after fitting is of the others: the maker's oil may last longer or shorter.</summary>
    public double FirstIntervalFactor { get; set; } = 1;

    /// <summary>An automatic lubricator that misses so many of its pulses while the chain runs is looked at.</summary>
    public double PulsesMissed { get; set; } = 3;

    /// <summary>The terms as the domain knows them.</summary>
    public OilTerms ToTerms() => new()
    {
        CostOfOiling = CostOfOiling,
        CostOfChain = CostOfChain,
        ModerateDustFactor = ModerateDustFactor,
        HeavyDustFactor = HeavyDustFactor,
        WarmFactor = WarmFactor,
        FirstIntervalFactor = FirstIntervalFactor,
        PulsesMissed = PulsesMissed,
    };

    /// <summary>Takes over other terms.</summary>
    public void Take(OilTerms terms)
    {
        (CostOfOiling, CostOfChain, PulsesMissed) = (terms.CostOfOiling, terms.CostOfChain, terms.PulsesMissed);
        (ModerateDustFactor, HeavyDustFactor, WarmFactor) = (terms.ModerateDustFactor, terms.HeavyDustFactor, terms.WarmFactor);
        FirstIntervalFactor = terms.FirstIntervalFactor;
    }
}
