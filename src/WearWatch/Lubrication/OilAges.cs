using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Lubrication;

/// <summary>How old a fitted chain's oil was at each of its running hours.</summary>
/// <remarks>
/// The age grows by an hour with each hour that the chain runs and falls to nothing at an oiling. A chain is fitted with the
/// maker's oil, so that a known fitting counts as an oiling; where the fitting is not known, nothing is said of the hours before
/// the first oiling. Of a chain of which no oiling was ever recorded nothing is said at all: not recorded is not the same as not
/// oiled.
/// </remarks>
public sealed class OilAges
{
    private readonly double[] oiledAt;

    private OilAges(double[] oiledAt) => this.oiledAt = oiledAt;

    /// <summary>Nothing is known.</summary>
    public static OilAges Unknown { get; } = new([]);

    /// <summary>
    /// Running hours since fitting at which the chain was oiled, rising; the fitting among them where it is known.
    /// </summary>
    public IReadOnlyList<double> OiledAtHours => oiledAt;

    /// <summary>Whether anything is known.</summary>
    public bool IsKnown => oiledAt.Length > 0;

    /// <summary>The ages of a fitted chain's oil.</summary>
    /// <param name="life">The fitted chain.</param>
    /// <param name="readings">All readings of its position: they lay dates and counters on its running hours.</param>
    /// <param name="events">All events of its position.</param>
    /// <param name="calendar">Lays dates between two readings on running hours.</param>
    public static OilAges Of(
        FittedChain life, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar)
    {
        var hours = LifeHours.Of(life, readings, calendar);
        double[] oilings =
        [
            .. events.Where(e => e.BroughtOil)
                .Select(e => hours.At(e.At, (e.CounterAfter ?? e.CounterBefore)?.Hours))
                .OfType<double>().Where(h => h >= 0 && !(life.Removed && h > life.RunningHours)),
        ];
        return oilings.Length == 0 ? Unknown : At(life.FittingKnown ? [0, .. oilings] : oilings);
    }

    /// <summary>The ages of oil that was applied at the running hours given.</summary>
    public static OilAges At(params IEnumerable<double> oiledAtHours) => new([.. oiledAtHours.Order().Distinct()]);

    /// <summary>The age of the oil at a running hour; null where it is not known.</summary>
    public double? AgeAt(double hours) => LastOilingAt(hours) is >= 0 and var last ? hours - oiledAt[last] : null;

    /// <summary>The age of the oil averaged over running hours; null where it is known of less than half of them.</summary>
    public double? Mean(double fromHours, double toHours)
    {
        if (!IsKnown || !(toHours > fromHours)) return null;
        var known = Math.Max(fromHours, oiledAt[0]);
        return toHours - known >= 0.5 * (toHours - fromHours)
            ? Sum(known, toHours, age => age * age / 2) / (toHours - known)
            : null;
    }

    /// <summary>
    /// Something that grows with the oil's age, summed over running hours that lie at or after the first known oiling.
    /// </summary>
    /// <param name="fromHours">From this running hour.</param>
    /// <param name="toHours">To this running hour.</param>
    /// <param name="integral">Its sum from fresh oil to an age; zero at zero.</param>
    public double Sum(double fromHours, double toHours, Func<double, double> integral)
    {
        var cycle = LastOilingAt(fromHours);
        if (cycle < 0) throw new ArgumentOutOfRangeException(nameof(fromHours), fromHours, "The oil's age is not known there.");
        var sum = 0.0;
        for (var at = fromHours; at < toHours; cycle++)
        {
            var end = cycle + 1 < oiledAt.Length ? Math.Min(oiledAt[cycle + 1], toHours) : toHours;
            sum += integral(end - oiledAt[cycle]) - integral(at - oiledAt[cycle]);
            at = end;
        }

        return sum;
    }

    private int LastOilingAt(double hours)
    {
        var at = Array.BinarySearch(oiledAt, hours);
        return at >= 0 ? at : ~at - 1;
    }
}
