using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Links;
using WearWatch.Lubrication;
using WearWatch.Parts;
using WearWatch.Running;
using WearWatch.Signals.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>
/// What a review concludes of one chain. Same raw rows, model, calendar and moment: same conclusion, bit for bit.
/// </summary>
/// <param name="Raw">What was told of it.</param>
/// <param name="Assessment">What the domain makes of it.</param>
/// <param name="Oiling">When it is to be oiled.</param>
/// <param name="ModelVersion">The knowledge that it rests on.</param>
/// <param name="Spread">The spread that its forecast was given.</param>
public sealed record ReviewedChain(
    RawChain Raw, Assessment Assessment, OilingDue Oiling, string ModelVersion, ForecastSpread Spread)
{
    /// <summary>The card with what the position has shown of its duty.</summary>
    public required ChainCard Seen { get; init; }

    /// <summary>Its automatic lubricator, when that has fallen silent.</summary>
    public required LubricatorWatch? Lubricator { get; init; }

    /// <summary>A jump of the counter that its controller tells, of which nobody has said why.</summary>
    public required CounterJump? CounterJump { get; init; }

    /// <summary>Its state by the register of lifting chains, on the plant's day; null for a chain that holds no load.</summary>
    public LiftingState? Lifting { get; init; }

    /// <summary>
    /// By how much it differs from the chains that run together with it; null where none do, or one is not measured.
    /// </summary>
    public GroupDifference? Group { get; init; }

    /// <summary>The condition by its readings alone, without what its links say.</summary>
    public required Condition WearCondition { get; init; }

    /// <summary>What the measures of its links say; null where there is no table of them, or nothing was measured.</summary>
    public required LinksState? Links { get; init; }

    /// <summary>What the readings of its parts and its wheels say.</summary>
    public required PartsState Parts { get; init; }

    /// <summary>Whether its track has moved from the stored one.</summary>
    public required bool TrackMoved { get; init; }

    /// <param name="raw">What was told of it.</param>
    /// <param name="knowledge">What the plant has taught so far.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment of the review.</param>
    /// <param name="from">Its stored track of this knowledge, to carry on from; null without one.</param>
    public static ReviewedChain Of(
        RawChain raw, Knowledge knowledge, ProductionCalendar calendar, DateTimeOffset now, CarriedTrack? from = null)
    {
        calendar = calendar.Knowing(raw.Ran);
        var seen = raw.CardSeen(calendar);
        var counter = HourCounter.At(now, raw.Readings, raw.Events, calendar);
        var assessment = Assessment.Of(
            raw.Card, raw.Readings, raw.Events, knowledge.PriorFor(seen), calendar, now, knowledge.Constants, from,
            knowledge.Spread);
        var links = LinksState.Of(raw.Card, raw.LinkMeasures, raw.Readings, raw.Events, knowledge.Region, calendar, now);
        var parts = PartsState.Of(raw.Card, raw.Parts, raw.Readings, raw.Events, calendar, now);
        var governed = LiftingDoubt.Govern(
            parts.Govern(links?.Govern(assessment, now) ?? assessment), raw.Readings,
            [.. raw.WaitingRows.Select(r => r.ToReading(raw.Card.Name))]);
        return new ReviewedChain(
            raw, governed,
            OilingDue.For(raw.Card, raw.Events, counter, calendar, now, knowledge.Oil), knowledge.Version,
            knowledge.Spread)
        {
            Lubricator = LubricatorWatch.Of(raw.Events, counter, calendar, now) is { } watch
                && watch.IsSilent(knowledge.Oil.PulsesMissed)
                ? watch
                : null,
            CounterJump = CounterJump.Of(raw.Ran, raw.Events, now),
            Seen = seen,
            WearCondition = assessment.Condition,
            Links = links,
            Parts = parts,
            TrackMoved = !ReferenceEquals(assessment.Carried, from),
        };
    }

    /// <summary>
    /// The limit that ends the chain: of its length, its links or its parts the one that comes first. Null where no date of any
    /// is known. Where the links alone tell of the chain its length is a guess, and is not asked.
    /// </summary>
    public LimitAhead? First => LimitAhead.First(
    [
        .. Links?.StandsFor(Assessment) == true ? [] : new[] { LimitAhead.ByLength(Assessment) },
        .. Links?.LimitsAhead ?? [],
        .. Parts.LimitsAhead,
    ]);

    /// <summary>The hours left, from when and until now: of its links, where they alone tell of the chain.</summary>
    private (WearForecast Forecast, double HoursThen, double HoursNow) Left
    {
        get
        {
            if (Links?.StandsFor(Assessment) != true || LimitAhead.First(Links.LimitsAhead) is not { } links)
                return (Assessment.Forecast, Assessment.HoursAtLastReading, Assessment.HoursNow);
            var now = Math.Max(Assessment.HoursNow, links.HoursSince);
            // Rounded, so that the same visit gives the same hours at every moment.
            return (links.Forecast, Math.Round(now - links.HoursSince, 3), now);
        }
    }

    /// <summary>The forecast as it is kept.</summary>
    public ForecastRow ToRow(ProductionCalendar calendar, DateTimeOffset now) => new()
    {
        ChainId = Raw.Id,
        MadeAt = now,
        IsLatest = true,
        LastReadingId = Raw.Stamp.LastReadingId,
        LastEventId = Raw.Stamp.LastEventId,
        LastLinkMeasureId = Raw.Stamp.LastLinkMeasureId,
        LastPartReadingId = Raw.Stamp.LastPartReadingId,
        ChainRevision = Raw.Stamp.Revision,
        ModelVersion = ModelVersion,
        Life = Assessment.History.Lives.Count - 1,
        ReadingsUsed = Assessment.Observations.Count,
        HoursAtLastReading = Left.HoursThen,
        HoursNow = Left.HoursNow,
        ElongationPct = Assessment.ElongationPercent,
        ElongationSdPct = Assessment.ElongationStandardDeviationPercent,
        RatePctPer1000H = Assessment.RatePercentPer1000Hours,
        LogRateSd = Assessment.LogRateStandardDeviation,
        LimitPct = Assessment.Limit.Percent,
        LimitReason = Assessment.Limit.Reason,
        LimitSource = Assessment.Limit.Source,
        ProbabilityPassed = Left.Forecast.ProbabilityPassed,
        PercentilesH = Left.Forecast.PercentilesHours,
        EarlyExponent = Spread.Early,
        LateExponent = Spread.Late,
        Sooner = First is { IsByLength: false } sooner ? sooner : null,
        EarlyDate = First?.DateAt(5, calendar, now),
        MiddleDate = First?.DateAt(50, calendar, now),
        LateDate = First?.DateAt(95, calendar, now),
        ShortenAtPct = Assessment.TakeUp?.End.Percent,
        ShortenPitches = Assessment.TakeUp?.End.PitchesToRemove,
        ShortenEarlyDate = Assessment.ShortenAt(5, calendar, now),
        ShortenMiddleDate = Assessment.ShortenAt(50, calendar, now),
        Condition = Assessment.Condition,
        OutOfUseBy = Assessment.OutOfUseBy,
        LinksCondition = Links?.Condition ?? Condition.NotKnown,
        LinksSaid = Links?.Sentence ?? Phrase.None,
        LinksEarlyDate = Links?.EarlyDate,
        SprocketCondition = Parts.SprocketCondition,
        TensionFrom = Parts.TensionFrom,
        OilingIntervalH = Oiling.IntervalHours,
        HoursSinceOiling = Oiling.HoursSinceLast,
        MeanHoursSinceOiling = Seen.Duty.HoursSinceOiling,
        AmbientC = Seen.Duty.AmbientC,
        NextOilingAt = Oiling.NextAt,
    };
}
