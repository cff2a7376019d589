using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>All that is concluded of the links of one round-link chain. It can be computed again at any time.</summary>
public sealed record LinksState
{
    private const double OneInTwenty = 0.05;

    /// <summary>What its maker says, and its size.</summary>
    public required LinkTable Table { get; init; }

    /// <summary>The limits that govern.</summary>
    public required LinkLimits Limits { get; init; }

    /// <summary>Each measure that was ever taken of it, over its running hours.</summary>
    public required IReadOnlyList<LinkTrack> Tracks { get; init; }

    /// <summary>The worst of each measure since it was fitted.</summary>
    public required LinkVerdict Verdict { get; init; }

    /// <summary>The severity: the worst of the verdict and of all forecasts.</summary>
    public required Condition Condition { get; init; }

    /// <summary>What heads the page.</summary>
    public required Phrase Sentence { get; init; }

    /// <summary>The earliest early date of its measures; null when none is known or in sight.</summary>
    public DateTimeOffset? EarlyDate => Known.Min(known => known.EarlyDate);

    /// <summary>The limits that its measures come to; none are left once one has reached it.</summary>
    public IEnumerable<LimitAhead> LimitsAhead => Tracks.Select(t => t.Ahead).OfType<LimitAhead>();

    private IEnumerable<MeasureOutlook.Known> Known => Tracks.Select(t => t.Outlook).OfType<MeasureOutlook.Known>();

    /// <summary>The assessment of the whole chain with what its links say: the worst governs.</summary>
    /// <remarks>
    /// Without a reading over pitches the links alone tell the condition; where nobody measured them they take nothing from it.
    /// </remarks>
    public Assessment Govern(Assessment assessment, DateTimeOffset now)
    {
        var byReadings = StandsFor(assessment) ? null : assessment.OutOfUseBy;
        var by = assessment.Card.HoldsLoad ? Earliest(byReadings, OutOfUseBy(now)) : null;
        if (Condition == Condition.NotKnown || Severity(Condition) < Severity(assessment.Condition))
            return assessment with { OutOfUseBy = by };
        return assessment with
        {
            Condition = Condition,
            OutOfUseBy = by,
            Notices = Condition is Condition.PlanASwap or Condition.SwapNow
                ? [LinkNotice.Of(this, assessment.Card.HoldsLoad),
                    .. assessment.Notices.Where(n => n.Kind != NoticeKind.LimitNear)]
                : assessment.Notices,
        };
    }

    /// <summary>Concludes from what was told; null for a chain without a table.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="visits">What was measured of its links, in the order in which it was told.</param>
    /// <param name="readings">Its other readings: their counters date visits that have none.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="region">Whose general limits hold.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    public static LinksState? Of(
        ChainCard card, IReadOnlyList<MeasuredLinks> visits, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events,
        LawRegion region, ProductionCalendar calendar, DateTimeOffset now)
    {
        if (card.Links is not { } table) return null;
        var limits = LinkLimits.For(table, card.HoldsLoad, region);
        var placed = LinkVisits.Place(card, table, visits, readings, events, calendar);
        var verdict = LinkVerdict.Of([.. placed.Visits.Select(v => v.Told)], table, limits);
        LinkTrack[] tracks =
        [
            .. Enum.GetValues<LinkMeasure>().Where(m => m != LinkMeasure.ThinnestDiameter || limits.Of(m) is not null)
                .Select(m => LinkTrack.Of(m, table, limits, placed, calendar, now)),
        ];
        var condition = Worse(verdict.Condition, tracks.Select(t => Ahead(t.Outlook, now)).DefaultIfEmpty().MaxBy(Severity));
        return new LinksState
        {
            Table = table,
            Limits = limits,
            Tracks = tracks,
            Verdict = verdict,
            Condition = condition,
            Sentence = condition == verdict.Condition ? verdict.Sentence : $"{SoonSaid(tracks, now)} {verdict.Sentence}",
        };
    }

    /// <summary>
    /// Whether the links alone tell of the chain: nobody has read a length over pitches, so that a date of it is a guess only.
    /// </summary>
    public bool StandsFor(Assessment assessment) =>
        assessment.ElongationPercent is null && Condition != Condition.NotKnown;

    private DateTimeOffset? OutOfUseBy(DateTimeOffset now) => Condition is Condition.SwapNow ? now : EarlyDate;

    private static DateTimeOffset? Earliest(params DateTimeOffset?[] dates) => dates.Min();

    private static Phrase SoonSaid(IEnumerable<LinkTrack> tracks, DateTimeOffset now)
    {
        var soonest = tracks.MaxBy(t => Severity(Ahead(t.Outlook, now)))!;
        var what = LinkWords.Of(soonest.Measure);
        return Ahead(soonest.Outlook, now) is Condition.SwapNow
            ? Phrase.Of($"By its trend the limit may have been reached since it was measured: {what}. Take out of use.")
            : $"By its trend the limit comes near: {what}. A competent person sets the date.";
    }

    private static Condition Ahead(MeasureOutlook outlook, DateTimeOffset now) => outlook is not MeasureOutlook.Known known
        ? Condition.NotKnown
        : known.ProbabilityPassed > OneInTwenty ? Condition.SwapNow
        : known.EarlyDate <= now + ConditionRule.PlanningLead ? Condition.PlanASwap
        : Condition.WithinLimit;

    // What is not known ahead takes nothing from what was measured; measures that nobody took are told beside it.
    private static Condition Worse(Condition measured, Condition ahead) =>
        ahead is Condition.PlanASwap or Condition.SwapNow && Severity(ahead) > Severity(measured) ? ahead : measured;

    private static int Severity(Condition condition) => (int)condition;
}
