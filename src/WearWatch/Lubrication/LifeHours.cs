using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Lubrication;

/// <summary>Lays what happened to a fitted chain on its running hours, between the readings whose hours are known.</summary>
internal sealed class LifeHours
{
    private const double SameHours = 1;

    private readonly List<Anchor> anchors;
    private readonly List<Anchor> dated;
    private readonly ProductionCalendar calendar;

    private LifeHours(List<Anchor> anchors, ProductionCalendar calendar)
    {
        (this.anchors, this.calendar) = (anchors, calendar);
        dated = anchors.FindAll(a => a.At is not null);
    }

    /// <summary>Learns the hours from a fitted chain's readings and its fitting.</summary>
    public static LifeHours Of(FittedChain life, IReadOnlyList<Reading> readings, ProductionCalendar calendar)
    {
        var anchors = life.Observations
            .Select(o =>
                new Anchor(o.HoursSinceFitting, readings[o.ReadingIndex].TakenAt, readings[o.ReadingIndex].Counter?.Hours))
            .ToList();
        if (life.FittingKnown)
            anchors.Insert(0, new Anchor(0, life.FittedAt, anchors.Count > 0 ? anchors[0].Counter - anchors[0].Hours : null));
        return new LifeHours(anchors, calendar);
    }

    /// <summary>
    /// The running hours since fitting of something; null when it does not lie in this chain's life, or nothing places it.
    /// </summary>
    /// <remarks>
    /// The counter goes before the date. A counter that was set back may show the same count twice: then the date decides.
    /// </remarks>
    public double? At(DateTimeOffset? at, double? counter)
    {
        for (var i = 0; i < anchors.Count; i++)
        {
            Anchor? next = i + 1 < anchors.Count ? anchors[i + 1] : null;
            if (at < anchors[i].At || at > next?.At) continue;
            if (counter is { } count && ByCounter(anchors[i], next, count) is { } hours) return hours;
        }

        return at is { } moment ? ByDate(moment) : null;
    }

    private static double? ByCounter(Anchor from, Anchor? to, double count)
    {
        if (from.Counter is not { } start || count < start) return null;
        if (to is not { } end) return from.Hours + count - start;
        if (end.Counter is not { } stop || count > stop) return null;
        return Math.Abs(stop - start - (end.Hours - from.Hours)) <= SameHours ? from.Hours + count - start : null;
    }

    /// <summary>Between two dated readings in proportion to the calendar's hours, after the last by the calendar.</summary>
    private double? ByDate(DateTimeOffset at)
    {
        var last = dated.FindLastIndex(a => a.At <= at);
        if (last < 0) return null;
        var since = calendar.Between(dated[last].At!.Value, at).Hours;
        if (last + 1 == dated.Count) return dated[last].Hours + since;
        var (from, to) = (dated[last], dated[last + 1]);
        var between = calendar.Between(from.At!.Value, to.At!.Value).Hours;
        return between > 0 ? from.Hours + (to.Hours - from.Hours) * since / between : from.Hours;
    }

    /// <summary>A running hour of the chain with what the calendar and the counter showed then.</summary>
    private readonly record struct Anchor(double Hours, DateTimeOffset? At, double? Counter);
}
