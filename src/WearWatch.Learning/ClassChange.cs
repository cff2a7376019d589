using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>What a change of one driver would do to the chains of a class, by the fitted regression.</summary>
/// <param name="Changed">The chains of which the driver is recorded and would change.</param>
/// <param name="OfClass">All chains of the class.</param>
/// <param name="Rate">How the wear rate of the typical one would change.</param>
/// <param name="Outside">How many of them would lie outside what the fleet shows; there it is a guess.</param>
public sealed record ClassChange(int Changed, int OfClass, RateChange Rate, int Outside)
{
    private const double LeastPercent = 5;

    /// <summary>
    /// To how much of today's value the driver has to be brought for half the wear, in percent; null where none does.
    /// </summary>
    public double? HalvesAtPercent { get; init; }

    /// <summary>How far the driver can be brought down before a further chain leaves what the fleet shows, in percent.</summary>
    public double? ShownToPercent { get; init; }

    /// <summary>Whether an effect is seen: the 90 % interval does not hold "no change".</summary>
    public bool IsSeen => Rate.LifeFactorLow > 1 || Rate.LifeFactorHigh < 1;

    /// <summary>Whether a driver is a quantity, which is brought to a part of what it is today.</summary>
    public static bool IsQuantity(ClassDriver driver) =>
        driver is ClassDriver.Load or ClassDriver.Speed or ClassDriver.OilInterval;

    /// <summary>Works it out; null when the driver is recorded for none of the chains, or would change for none.</summary>
    /// <param name="cards">The chains of the class, as the model sees them.</param>
    /// <param name="model">The fitted regression.</param>
    /// <param name="driver">What is changed.</param>
    /// <param name="toPercent">To how much of today's value a quantity is brought, in percent.</param>
    public static ClassChange? Of(IReadOnlyList<ChainCard> cards, FleetModel model, ClassDriver driver, double toPercent)
    {
        if (MeanAt(toPercent) is not { } mean) return null;
        if (!IsQuantity(driver)) return mean;
        var steps = Enumerable.Range(0, (int)(100 / LeastPercent)).Select(i => 100 - LeastPercent * i);
        var today = MeanAt(100)!.Outside;
        return mean with
        {
            HalvesAtPercent = Halving(percent => MeanAt(percent)!.Rate.LogRatio),
            ShownToPercent = steps.TakeWhile(p => MeanAt(p)!.Outside <= today).Last(),
        };

        ClassChange? MeanAt(double percent) => Mean(cards, model, driver, percent / 100);
    }

    /// <summary>
    /// The mean of ln(rate after / rate before) over the chains. The error of a coefficient is common to all of them, so that it
    /// does not average out: the standard error is the mean of theirs.
    /// </summary>
    private static ClassChange? Mean(IReadOnlyList<ChainCard> cards, FleetModel model, ClassDriver driver, double share)
    {
        var changes = cards.Select(card => (Card: card, After: After(card.Duty, driver, share))).Where(c => c.After is not null)
            .Select(c => model.Change(c.Card, c.Card with { Duty = c.After! })).ToList();
        if (changes.Count == 0) return null;
        var outside = changes.Where(c => c.Outside.Count > 0).ToList();
        return new ClassChange(changes.Count, cards.Count, new RateChange(
            changes.Average(c => c.LogRatio), changes.Average(c => c.StandardError),
            [.. outside.SelectMany(c => c.Outside).Distinct()]), outside.Count);
    }

    /// <summary>By bisection; in a regression of logarithms the change rises or falls all along.</summary>
    private static double? Halving(Func<double, double> logRatioAt)
    {
        var half = -Math.Log(2);
        if (logRatioAt(LeastPercent) > half) return null;
        var (low, high) = (LeastPercent, 100.0);
        while (high - low > 0.5)
        {
            var middle = (low + high) / 2;
            if (logRatioAt(middle) <= half) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>The duty after the change; null when nothing is known of it or nothing would change.</summary>
    private static Duty? After(Duty duty, ClassDriver driver, double share) => driver switch
    {
        ClassDriver.Load when duty.RelativeLoad is { } load => duty with { RelativeLoad = load * share },
        ClassDriver.Speed when duty.SpeedMetresPerSecond is { } speed => duty with { SpeedMetresPerSecond = speed * share },
        ClassDriver.OilInterval when duty.HoursSinceOiling is { } age => duty with { HoursSinceOiling = age * share },
        ClassDriver.Lubricator when duty.Lubrication is > LubricationState.Auto =>
            duty with { Lubrication = LubricationState.Auto },
        ClassDriver.Enclosure when duty.Dust is > DustLevel.Clean => duty with { Dust = DustLevel.Clean },
        _ => null,
    };
}
