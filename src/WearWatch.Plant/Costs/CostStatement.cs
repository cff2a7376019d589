using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Plant.Costs;

/// <summary>What some chains cost in a period. Amounts are in the plant's own money.</summary>
public sealed record CostStatement
{
    private const double NinetyPercent = 1.6449;

    /// <summary>Running hours in the period.</summary>
    public double Hours { get; init; }

    /// <summary>Chains taken off in it.</summary>
    public int Swaps { get; init; }

    /// <summary>Those of them that broke while they ran.</summary>
    public int Broke { get; init; }

    /// <summary>New chains.</summary>
    public double Chains { get; init; }

    /// <summary>Sprockets that chains took along which had run past their limit.</summary>
    public double Sprockets { get; init; }

    /// <summary>Stops for swaps.</summary>
    public double Stops { get; init; }

    /// <summary>Breakdowns.</summary>
    public double Breakdowns { get; init; }

    /// <summary>The part of the chains' price whose life was thrown away.</summary>
    public double UnusedPrice { get; init; }

    /// <summary>The running hours thrown away with it.</summary>
    public double UnusedHours { get; init; }

    /// <summary>Breakdowns that the swaps spared, in expectation; see <see cref="SparedBreakdown"/>.</summary>
    public double Spared { get; init; }

    /// <summary>The variance of that number: each swap spared one or none, independently of the others.</summary>
    public double SparedVariance { get; init; }

    /// <summary>What these breakdowns would have cost more than the swaps that came before them, in expectation.</summary>
    public double Saved { get; init; }

    /// <summary>Oilings recorded.</summary>
    public int Oilings { get; init; }

    /// <summary>Oil that was told to be used or given by lubricators, in millilitres.</summary>
    public double OilMl { get; init; }

    /// <summary>All of it.</summary>
    public double Total => Chains + Sprockets + Stops + Breakdowns;

    /// <summary>Chains taken off before they broke.</summary>
    public int Early => Swaps - Broke;

    /// <summary>The 90 % interval of the breakdowns spared, by the normal law, within what can be.</summary>
    public ConfidenceInterval SparedInterval => new(
        Math.Max(0, Spared - NinetyPercent * Math.Sqrt(SparedVariance)),
        Math.Min(Early, Spared + NinetyPercent * Math.Sqrt(SparedVariance)));

    /// <summary>
    /// Cost of 1,000 running hours; null with fewer hours than that, over which one swap would look like a rate.
    /// </summary>
    public double? PerThousandHours => Hours >= 1000 ? Total / (Hours / 1000) : null;

    /// <summary>Two sheets as one.</summary>
    public static CostStatement operator +(CostStatement a, CostStatement b) => new()
    {
        Hours = a.Hours + b.Hours,
        Swaps = a.Swaps + b.Swaps,
        Broke = a.Broke + b.Broke,
        Chains = a.Chains + b.Chains,
        Sprockets = a.Sprockets + b.Sprockets,
        Stops = a.Stops + b.Stops,
        Breakdowns = a.Breakdowns + b.Breakdowns,
        UnusedPrice = a.UnusedPrice + b.UnusedPrice,
        UnusedHours = a.UnusedHours + b.UnusedHours,
        Spared = a.Spared + b.Spared,
        SparedVariance = a.SparedVariance + b.SparedVariance,
        Saved = a.Saved + b.Saved,
        Oilings = a.Oilings + b.Oilings,
        OilMl = a.OilMl + b.OilMl,
    };

    /// <summary>The same as the operator.</summary>
    public static CostStatement Add(CostStatement left, CostStatement right) => left + right;

    /// <summary>Many sheets as one.</summary>
    public static CostStatement Sum(IEnumerable<CostStatement> sheets) => sheets.Aggregate(new CostStatement(), (a, b) => a + b);

    /// <summary>
    /// What one life cost in a period: its share of the hours by the calendar, and all the rest at the day on which it was taken
    /// off.
    /// </summary>
    /// <remarks>
    /// A chain taken off before its limit throws away <c>1 - e/limit</c> of its life, e its last elongation: wear goes on about
    /// evenly up to most limits. A life whose dates were not told has no place in any period.
    /// </remarks>
    public static CostStatement Of(BookedChain chain, BookedLife life, CostTerms terms, CostPeriod period)
    {
        if (life.EndedAt is not { } ended) return new CostStatement();
        var run = new CostStatement { Hours = life.FittedAt is { } fitted ? life.HoursRun * period.ShareOf(fitted, ended) : 0 };
        if (!life.Removed || !period.Holds(ended)) return run;
        var price = terms.ChainPrice(chain.Card);
        var (stop, breakdown) = (terms.Costs.StopOf(chain.Card.Line), terms.Costs.BreakdownOf(chain.Card.Line));
        var unused = !life.Life.Failed && life.LastPercent is > 0 and var last
            ? Math.Clamp(1 - last / chain.LimitPercent, 0, 0.95)
            : 0;
        var spared = SparedBy(chain, life, terms);
        return run with
        {
            Swaps = 1,
            Broke = life.Broke ? 1 : 0,
            Chains = price,
            Sprockets = life.Life.Failed && life.HoursRun > life.Life.Hours ? terms.SprocketPrice : 0,
            Stops = life.Broke ? 0 : stop,
            Breakdowns = life.Broke ? breakdown : 0,
            UnusedPrice = unused * price,
            UnusedHours = life.HoursRun * unused / (1 - unused),
            Spared = spared,
            SparedVariance = spared * (1 - spared),
            Saved = spared * (breakdown - stop),
        };
    }

    /// <summary>The probability that the chain would have broken, had it been left on until the next chance.</summary>
    private static double SparedBy(BookedChain chain, BookedLife life, CostTerms terms)
    {
        if (life.Broke) return 0;
        var share = life is { FittedAt: { } fitted, EndedAt: { } ended } && ended > fitted
            ? Math.Min(1, life.HoursRun / (ended - fitted).TotalHours)
            : 1;
        var (ahead, mean) = (share * terms.Costs.NextChance.TotalHours, terms.Costs.MeanHoursToFailurePastLimit);
        if (life.Life.Failed) return SparedBreakdown.PastLimit(ahead, mean);
        return life is { LastPercent: { } last, LogRate: { } rate } && last < chain.LimitPercent
            ? SparedBreakdown.BeforeLimit(chain.LimitPercent - last, rate, ahead, mean)
            : 0;
    }
}
