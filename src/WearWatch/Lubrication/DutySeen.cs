using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Lubrication;

/// <summary>
/// What a chain's records show of its duty beyond what its card tells: how old its oil is on average, how warm it is there.
/// </summary>
public static class DutySeen
{
    /// <summary>
    /// A chain younger than this shows no habit of oiling yet; the chains before it at the position show theirs.
    /// </summary>
    public const double FewestHours = 500;

    /// <summary>Fewer temperatures than this are no temperature of the surroundings.</summary>
    public const int FewestTemperatures = 3;

    /// <summary>The card of one fitted chain, its lot and what its life shows, for learning from it.</summary>
    public static ChainCard Of(
        ChainCard card, FittedChain life, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events,
        ProductionCalendar calendar)
    {
        card = card with { Lot = life.Lot };
        if (!TellsMore(readings, events)) return card;
        return With(
            card, OilAges.Of(life, readings, events, calendar).Mean(0, life.RunningHours),
            life.Observations.Select(o => readings[o.ReadingIndex]));
    }

    /// <summary>
    /// The card with what its position has shown up to its last reading, for a forecast: nothing after that is looked at.
    /// </summary>
    /// <remarks>
    /// The chain that runs now tells how it is oiled once it has run <see cref="FewestHours"/>; before that the chains before it
    /// do.
    /// </remarks>
    public static ChainCard AtLastReading(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        if (!TellsMore(readings, events)) return card;
        var age = ChainHistory.AsOfLastReading(card, readings, events, calendar).Lives.Reverse()
            .Where(life => life.RunningHours >= FewestHours)
            .Select(life => OilAges.Of(life, readings, events, calendar).Mean(0, life.RunningHours))
            .FirstOrDefault(mean => mean is not null);
        return With(card, age, readings);
    }

    private static bool TellsMore(IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events) =>
        events.Any(e => e.BroughtOil) || readings.Any(r => r.TemperatureC is not null);

    private static ChainCard With(ChainCard card, double? hoursSinceOiling, IEnumerable<Reading> readings)
    {
        double[] temperatures = [.. readings.Select(r => r.TemperatureC).OfType<double>()];
        return card with
        {
            Duty = card.Duty with
            {
                HoursSinceOiling = hoursSinceOiling,
                AmbientC = card.Duty.AmbientC ?? (temperatures.Length < FewestTemperatures ? null : Median.Of(temperatures)),
            },
        };
    }
}
