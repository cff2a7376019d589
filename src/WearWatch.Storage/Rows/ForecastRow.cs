using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Storage.Rows;

/// <summary>
/// One forecast, kept with the model that made it. Rows are only ever added; the newest of a chain is what the screens show.
/// </summary>
public sealed class ForecastRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    public DateTimeOffset MadeAt { get; init; }

    /// <summary>Whether it is the newest of its chain; the one flag that changes.</summary>
    public bool IsLatest { get; set; }

    /// <summary>
    /// The newest reading row that was there when it was made, whether or not it counted; null when there was none.
    /// </summary>
    public long? LastReadingId { get; init; }

    /// <summary>The newest event row that was there when it was made; null when there was none.</summary>
    public long? LastEventId { get; init; }

    /// <summary>The state of the chain's entry in the register from which it was made.</summary>
    public int ChainRevision { get; init; }

    /// <summary>The fleet model that gave the prior, or "broad prior".</summary>
    public required string ModelVersion { get; init; }

    /// <summary>Which of the position's fitted chains it is about, from 0.</summary>
    public int Life { get; init; }

    public int ReadingsUsed { get; init; }

    public double HoursAtLastReading { get; init; }

    public double HoursNow { get; init; }

    public double? ElongationPct { get; init; }

    public double? ElongationSdPct { get; init; }

    public double RatePctPer1000H { get; init; }

    public double LogRateSd { get; init; }

    public double LimitPct { get; init; }

    public LimitReason LimitReason { get; init; }

    public required string LimitSource { get; init; }

    public double ProbabilityPassed { get; init; }

    /// <summary>Hours left from the last reading at 1, 2, ... 99 %.</summary>
    public required IReadOnlyList<double> PercentilesH { get; init; }

    /// <summary>By how much its early side was stretched when it was made; see <see cref="ForecastSpread"/>.</summary>
    public double EarlyExponent { get; init; } = 1;

    /// <summary>By how much its late side was.</summary>
    public double LateExponent { get; init; } = 1;

    /// <summary>
    /// What comes to its limit before its length does, and from when on it is counted: <see cref="MadeAt"/>. Null where the
    /// length is first. The dates are those of the first.
    /// </summary>
    public LimitAhead? Sooner { get; init; }

    public DateTimeOffset? EarlyDate { get; init; }

    public DateTimeOffset? MiddleDate { get; init; }

    public DateTimeOffset? LateDate { get; init; }

    /// <summary>The elongation at which it is to be shortened; null where wear ends it first, or that is not known.</summary>
    public double? ShortenAtPct { get; init; }

    /// <summary>How many pitches go then; null as before.</summary>
    public int? ShortenPitches { get; init; }

    /// <summary>The date that nineteen of twenty such chains reach later; null where it is not in sight.</summary>
    public DateTimeOffset? ShortenEarlyDate { get; init; }

    /// <summary>The date that half of them reach later.</summary>
    public DateTimeOffset? ShortenMiddleDate { get; init; }

    public Condition Condition { get; init; }

    /// <summary>Of a chain that holds a load: when it is out of use, whatever the forecast says; null for none.</summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>The newest row of link measures that was there when it was made; null when there was none.</summary>
    public long? LastLinkMeasureId { get; init; }

    /// <summary>The newest row of a part's reading that was there when it was made; null when there was none.</summary>
    public long? LastPartReadingId { get; init; }

    /// <summary>The condition by the measures of its links.</summary>
    public Condition LinksCondition { get; init; }

    /// <summary>The worst of those measures in a sentence, or empty.</summary>
    public Phrase LinksSaid { get; init; } = Phrase.None;

    /// <summary>The early date of the first of those measures to reach its limit.</summary>
    public DateTimeOffset? LinksEarlyDate { get; init; }

    /// <summary>The condition of the sprockets by the readings of their teeth.</summary>
    public Condition SprocketCondition { get; init; }

    /// <summary>The date that nineteen of twenty such slacks stay within their limit to: then it is tensioned anew.</summary>
    public DateTimeOffset? TensionFrom { get; init; }

    public double? OilingIntervalH { get; init; }

    /// <summary>Running hours since the last oiling, averaged over the hours run: what the fleet model was asked with.</summary>
    public double? MeanHoursSinceOiling { get; init; }

    /// <summary>Temperature of the surroundings that the fleet model was asked with.</summary>
    public double? AmbientC { get; init; }

    public double? HoursSinceOiling { get; init; }

    public DateTimeOffset? NextOilingAt { get; init; }

    /// <summary>The spread that it was given.</summary>
    public ForecastSpread Spread => new(EarlyExponent, LateExponent);

    /// <summary>The limit that governs: by its length or by what comes before it.</summary>
    public LimitAhead First => Sooner ?? new LimitAhead(Phrase.None, ToForecast(), HoursNow - HoursAtLastReading);

    /// <summary>The distribution of the length's limit as the domain knows it.</summary>
    public WearForecast ToForecast() =>
        new() { LimitPercent = LimitPct, ProbabilityPassed = ProbabilityPassed, PercentilesHours = PercentilesH };
}
