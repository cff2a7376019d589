using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>All that is concluded of one chain from its raw readings and events. It can be computed again at any time.</summary>
public sealed record Assessment
{
    /// <summary>The chain.</summary>
    public required ChainCard Card { get; init; }

    /// <summary>Its readings and events put in order.</summary>
    public required ChainHistory History { get; init; }

    /// <summary>What was believed before the first reading of the chain that runs now.</summary>
    public required WearPrior Prior { get; init; }

    /// <summary>The observations of the chain that runs now, judged.</summary>
    public required IReadOnlyList<JudgedObservation> Observations { get; init; }

    /// <summary>Running hours of the chain at its last reading, used or held back; zero without one.</summary>
    public required double HoursAtLastReading { get; init; }

    /// <summary>Running hours of the chain now, by counter or by calendar since the last reading.</summary>
    public required double HoursNow { get; init; }

    /// <summary>
    /// Steady elongation at the last reading by the track, in percent; null without readings. It has
    /// <see cref="RunInLeftPercent"/> in it.
    /// </summary>
    public required double? ElongationPercent { get; init; }

    /// <summary>
    /// The run-in that was still to come at the last reading, in percent: a tape shows so much less than the track.
    /// </summary>
    public double RunInLeftPercent => History.Current.RunInLeftPercent(HoursAtLastReading, Constants);

    /// <summary>Standard deviation of <see cref="ElongationPercent"/>, in percent; null without readings.</summary>
    public required double? ElongationStandardDeviationPercent { get; init; }

    /// <summary>Wear rate now, in percent per 1,000 running hours: the median of the belief.</summary>
    public required double RatePercentPer1000Hours { get; init; }

    /// <summary>Standard deviation of ln(wear rate).</summary>
    public required double LogRateStandardDeviation { get; init; }

    /// <summary>The limit that governs.</summary>
    public required ReplacementLimit Limit { get; init; }

    /// <summary>When it is to be shortened; null where wear ends it first, or the travel of its take-up is not known.</summary>
    public TakeUpOutlook? TakeUp { get; init; }

    /// <summary>The hours left to that limit, from the last reading.</summary>
    public required WearForecast Forecast { get; init; }

    /// <summary>The condition.</summary>
    public required Condition Condition { get; init; }

    /// <summary>How it is told.</summary>
    public ShownCondition ShownCondition => ConditionWords.Of(Condition, Card.HoldsLoad);

    /// <summary>
    /// From when a chain that lifts or holds a load is out of use, whatever else is planned: three months after the first reading
    /// at the attention mark of its standard, or the forecast's early date, whichever comes first; at once where it is out of use
    /// already. Null for a chain that does not lift, or while neither is in sight.
    /// </summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>
    /// The upper end of the elongation by which a chain that lifts is judged, in percent; null for any other, or unmeasured.
    /// </summary>
    public double? LiftingUpperPercent { get; init; }

    /// <summary>Why nothing is known although it was measured, and by which reading; empty when that is not so.</summary>
    public Phrase WhyNotKnown { get; init; } = Phrase.None;

    /// <summary>Of a chain that lifts: what a reading in doubt would mean, and what to do until then; or empty.</summary>
    public Phrase ReadingInDoubt { get; init; } = Phrase.None;

    /// <summary>The reading whose counter leaves nothing known, by its index among the readings; null for none.</summary>
    public int? NotKnownByReading { get; init; }

    /// <summary>What asks for attention; at most one of a kind.</summary>
    public required IReadOnlyList<Notice> Notices { get; init; }

    /// <summary>The constants of wear that it was made with.</summary>
    public required WearConstants Constants { get; init; }

    /// <summary>The track of the chain that runs now with its judged observations: what is stored and carried on.</summary>
    public required CarriedTrack Carried { get; init; }

    /// <summary>The track of the chain that runs now.</summary>
    public WearTrack Track => Carried.Track;

    /// <summary>The track told in the terms of the chain.</summary>
    public required WearNow View { get; init; }

    /// <summary>Assesses a chain: reading, gauge, track, forecast, notices. Same input, same output, bit for bit.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="prior">What is believed of it before the first reading.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    /// <param name="constants">The constants of wear; the defaults if not given.</param>
    /// <param name="from">
    /// A stored track of the same constants to carry on from, where it leads to the chain as it is now.
    /// </param>
    /// <param name="spread">By how much the plant's forecasts are stretched; as made if not given.</param>
    public static Assessment Of(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, WearPrior prior,
        ProductionCalendar calendar,
        DateTimeOffset now, WearConstants? constants = null, CarriedTrack? from = null, ForecastSpread? spread = null)
    {
        var asTold = AsTold(card, readings, events, prior, calendar, now, constants, from, spread);
        var told = KnowledgeFloor.IsBelow(asTold)
            ? KnowledgeFloor.Told(asTold, index => AsTold(
                card, [.. readings.Select((r, i) => i == index ? r with { Counter = null } : r)], events, prior, calendar, now,
                constants, from, spread))
            : asTold;
        return LiftingDoubt.Govern(told with { Notices = WearNotices.Of(told, calendar, now) }, readings, []);
    }

    private static Assessment AsTold(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, WearPrior prior,
        ProductionCalendar calendar,
        DateTimeOffset now, WearConstants? constants, CarriedTrack? from, ForecastSpread? spread)
    {
        var filter = constants is null ? WearFilter.Default : new WearFilter(constants);
        var history = ChainHistory.Take(card, readings, events, calendar);
        var carried = (from?.LeadsTo(history.Current, prior) == true ? from : CarriedTrack.Start(history.Current, prior))
            .On(filter, history.Current);
        var (track, observations) = carried;
        var view = WearNow.Of(track, filter);
        double? elongation = observations.Count > 0 ? view.ElongationPercent : null;
        var limits = LimitRules.For(
            card, Shortening.PitchesOut(events), TakeUpOutlook.AheadMm(card, readings, events, history.Current, elongation));
        var limit = limits.Governing;
        var forecast = ForecastTo(limit.Percent);
        var hoursAtLastReading = history.Current.RunningHours;
        var hoursNow = hoursAtLastReading + HoursSince(history.Current, readings, calendar, now).Hours;

        var lifting = LiftingWear.Of(card, readings, observations, view, limit.PlanFromPercent, now);
        var condition = ConditionRule.Of(
            elongation, limit, forecast, hoursNow - hoursAtLastReading,
            calendar.Between(now, now + ConditionRule.PlanningLead), lifting?.UpperPercent);
        if (lifting?.OutOfUseBy <= now) condition = Condition.SwapNow;

        var assessment = new Assessment
        {
            Card = card,
            History = history,
            Prior = prior,
            Constants = filter.Constants,
            Observations = observations,
            HoursAtLastReading = hoursAtLastReading,
            HoursNow = hoursNow,
            ElongationPercent = elongation,
            ElongationStandardDeviationPercent = elongation is null ? null : view.ElongationDeviationPercent,
            RatePercentPer1000Hours = Math.Exp(view.LogRate),
            LogRateStandardDeviation = view.LogRateDeviation,
            Limit = limit,
            Forecast = forecast,
            TakeUp = limits.TakeUp is { Task: TakeUpTask.Shorten } end ? new(end, ForecastTo(end.Percent)) : null,
            Condition = condition,
            LiftingUpperPercent = lifting?.UpperPercent,
            Notices = [],
            Carried = carried,
            View = view,
        };
        return card.HoldsLoad ? assessment with { OutOfUseBy = assessment.HardDate(lifting, calendar, now) } : assessment;

        WearForecast ForecastTo(double percent) =>
            (spread ?? ForecastSpread.AsMade).Apply(filter.Forecast(history.Current, track, percent));
    }

    private DateTimeOffset? HardDate(LiftingWear? lifting, ProductionCalendar calendar, DateTimeOffset now)
    {
        // A chain that was never measured cannot be judged from these data: what is believed of such chains dates nothing.
        DateTimeOffset?[] dates =
        [
            lifting?.OutOfUseBy, ElongationPercent is null ? null : this.DateAt(5, calendar, now),
            Condition == Condition.SwapNow ? now : null,
        ];
        return dates.Min();
    }

    /// <summary>Running hours since the last reading, or since fitting, by the calendar; zero where it has no date.</summary>
    private static RunningHours HoursSince(
        FittedChain chain, IReadOnlyList<Reading> readings, ProductionCalendar calendar, DateTimeOffset now)
    {
        var since = chain.LastReadingIndex is { } last ? readings[last].TakenAt : chain.FittedAt;
        return since is { } from ? calendar.Between(from, now) : RunningHours.Zero;
    }
}
