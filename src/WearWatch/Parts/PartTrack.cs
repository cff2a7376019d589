using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Parts;

/// <summary>One part of a chain or its wheels over its running hours, with its own limit and forecast.</summary>
/// <param name="Part">Which part.</param>
/// <param name="Limit">Its limit; null where none is known.</param>
/// <param name="Findings">Its readings since it was renewed, in order.</param>
/// <param name="Outlook">When it will have reached its limit.</param>
/// <remarks>
/// The excess length of a shallow arc grows with the square of its sag, and wear lengthens a chain evenly: so the slack is held
/// against its limit by squares, from what it was at the first reading after it was set. Derived from geometry; docs/method.md.
/// </remarks>
public sealed record PartTrack(WearPart Part, PartLimit? Limit, IReadOnlyList<PartFinding> Findings, MeasureOutlook Outlook)
{
    private const double OneInTwenty = 0.05;

    /// <summary>The reading that counts: the worst since it was renewed, of what is set or moved the newest.</summary>
    public PartFinding? Governing => Part is WearPart.Sag or WearPart.Alignment
        ? Findings is [.., var newest] ? newest : null
        : Findings.MaxBy(f => f.Way?.Percent ?? (Part.Grows ? f.Reading.Mm : -f.Reading.Mm));

    /// <summary>
    /// The limit that ends the chain with it: none are left once a reading has reached it. Null where its date is not known, and
    /// of what is set anew instead: a slack, a line of sprockets.
    /// </summary>
    public LimitAhead? Ahead
    {
        get
        {
            if (!Part.IsOfChain && !Part.IsOfSprocket) return null;
            var (forecast, since) = Governing?.Way is { IsReached: true } ? (LimitTrend.Reached, 0)
                : Outlook is MeasureOutlook.Known known ? (known.Forecast, known.HoursSince)
                : (null, 0);
            return forecast is null ? null : new(Part.Words, forecast, since) { IsOfSprockets = Part.IsOfSprocket };
        }
    }

    /// <summary>How bad it is: red where the limit has been reached, of what holds a load where it may have been.</summary>
    /// <param name="holdsLoad">Whether the chain lifts or holds a load.</param>
    /// <param name="now">The moment.</param>
    public Condition ConditionOf(bool holdsLoad, DateTimeOffset now)
    {
        if (Governing?.Way is not { } way) return Condition.NotKnown;
        var known = Outlook as MeasureOutlook.Known;
        var passed = known?.ProbabilityPassed > OneInTwenty;
        if (way.IsReached || (holdsLoad && (way.MayBeReached || passed))) return Condition.SwapNow;
        return way.IsToBePlanned || passed || known?.EarlyDate <= now + ConditionRule.PlanningLead
            ? Condition.PlanASwap
            : Condition.WithinLimit;
    }

    /// <summary>The track of a part.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="part">The part.</param>
    /// <param name="all">All readings of it, in the order in which they were taken.</param>
    /// <param name="readings">The chain's lengths: their counters date visits that have none.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    internal static PartTrack Of(
        ChainCard card, WearPart part, IReadOnlyList<PartReading> all, IReadOnlyList<Reading> readings,
        IReadOnlyList<ChainEvent> events, ProductionCalendar calendar, DateTimeOffset now)
    {
        var limit = PartLimit.Of(card, part, ToldOf(all));
        var renewals = RenewalsOf(part, events);
        // A wheel is not as old as the chain on it: while no fitting of it is recorded, its hours count from its first reading.
        var since = part.IsOfChain || renewals.Any(e => e.Kind == ChainEventKind.Replacement)
            ? card
            : card with { FittedAt = null, FittedCounter = null };
        var visits = ChainVisits.Place(since, all, r => (r.TakenAt, r.Counter, true), readings, renewals, calendar);
        PartFinding[] findings =
        [
            .. visits.Visits.Select(v => new PartFinding(
                v.Told, v.Hours, limit is null ? null : WayOf(part, v.Told.Mm, visits.Visits[0].Told.Mm, limit))),
        ];
        return new(part, limit, findings, OutlookOf(part, limit, findings, visits.Chain, calendar, now));
    }

    /// <summary>What was told of a part beside its readings: the newest of each.</summary>
    public static PartTold ToldOf(IReadOnlyList<PartReading> all) => new(
        all.LastOrDefault(r => r.Told.NewMm is not null)?.Told.NewMm,
        all.LastOrDefault(r => r.Told.LimitMm is not null)?.Told.LimitMm,
        all.LastOrDefault(r => r.Told.LimitMm is not null)?.Told.LimitSource ?? "");

    private static MeasureOutlook OutlookOf(
        WearPart part, PartLimit? limit, IReadOnlyList<PartFinding> findings, FittedChain chain, ProductionCalendar calendar,
        DateTimeOffset now) =>
        !part.HasTrend ? new MeasureOutlook.NotKnown($"What is out of line was moved: it has no trend.")
        : limit is null ? new MeasureOutlook.NotKnown($"Not known: no limit is known. Enter your own.")
        : LimitTrend.Of(
            [.. findings.Select(f => new WayPoint(f.Reading.TakenAt, f.Hours, f.Way!.Value))], chain, calendar, now);

    private static LimitWay WayOf(WearPart part, double mm, double firstMm, PartLimit limit)
    {
        var expanded = PartFinding.ExpandedMm(part);
        if (part is not WearPart.Sag) return LimitWay.Of(mm, expanded, limit.NewMm, limit.Mm);
        var from = firstMm < limit.Mm ? firstMm * firstMm : 0;
        return LimitWay.Of(mm * mm, 2 * mm * expanded, from, limit.Mm * limit.Mm);
    }

    /// <summary>The events as this part sees them: what renews it is its fitting, and no other fitting is.</summary>
    private static IReadOnlyList<ChainEvent> RenewalsOf(WearPart part, IReadOnlyList<ChainEvent> events) =>
        [.. events.Select(e => part.IsRenewedBy(e.Kind) ? e with { Kind = ChainEventKind.Replacement }
            : e.Kind == ChainEventKind.Replacement ? e with { Kind = ChainEventKind.Inspection } : e)];
}
