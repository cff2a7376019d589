using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Tracking;

/// <summary>When a forecast is worth a row of its own.</summary>
public static class ForecastKeeping
{
    /// <summary>
    /// Whether a new forecast says anything that the kept one does not: it is another one, another calendar dates it, or it
    /// is of another day in the plant.
    /// </summary>
    public static bool IsNews(ForecastRow? kept, ForecastRow made, TimeZoneInfo zone) =>
        kept is null || !IsSameForecast(kept, made) || Day(kept.MadeAt, zone) != Day(made.MadeAt, zone)
        || HasMoved(kept.EarlyDate, made.EarlyDate) || HasMoved(kept.MiddleDate, made.MiddleDate)
        || HasMoved(kept.OutOfUseBy, made.OutOfUseBy) || HasMoved(kept.NextOilingAt, made.NextOilingAt)
        || HasMoved(kept.LinksEarlyDate, made.LinksEarlyDate) || HasMoved(kept.ShortenEarlyDate, made.ShortenEarlyDate)
        || HasMoved(kept.TensionFrom, made.TensionFrom);

    /// <summary>Whether two rows hold the same forecast, bit for bit, whenever they were made.</summary>
    public static bool IsSameForecast(ForecastRow a, ForecastRow b) =>
        a.ModelVersion == b.ModelVersion && a.Life == b.Life && a.ReadingsUsed == b.ReadingsUsed
        && a.HoursAtLastReading.Equals(b.HoursAtLastReading) && a.ElongationPct.Equals(b.ElongationPct)
        && a.ElongationSdPct.Equals(b.ElongationSdPct) && a.RatePctPer1000H.Equals(b.RatePctPer1000H)
        && a.LogRateSd.Equals(b.LogRateSd) && a.LimitPct.Equals(b.LimitPct) && a.LimitReason == b.LimitReason
        && a.LimitSource == b.LimitSource && a.Condition == b.Condition && a.OilingIntervalH.Equals(b.OilingIntervalH)
        && a.ProbabilityPassed.Equals(b.ProbabilityPassed) && a.PercentilesH.SequenceEqual(b.PercentilesH)
        && (a.ChainRevision, a.LastReadingId, a.LastEventId, a.LastLinkMeasureId, a.LastPartReadingId)
        == (b.ChainRevision, b.LastReadingId, b.LastEventId, b.LastLinkMeasureId, b.LastPartReadingId)
        && (a.LinksCondition, a.LinksSaid, a.SprocketCondition) == (b.LinksCondition, b.LinksSaid, b.SprocketCondition)
        && a.Sooner?.Cause == b.Sooner?.Cause
        && (a.Sooner?.Forecast.PercentilesHours ?? []).SequenceEqual(b.Sooner?.Forecast.PercentilesHours ?? [])
        && (a.ShortenAtPct, a.ShortenPitches) == (b.ShortenAtPct, b.ShortenPitches);

    /// <summary>Within a day dates creep by minutes as hours are counted anew; a changed calendar moves them farther.</summary>
    private static bool HasMoved(DateTimeOffset? kept, DateTimeOffset? made) =>
        kept is null != made is null || (kept - made)?.Duration() > TimeSpan.FromHours(12);

    private static DateOnly Day(DateTimeOffset moment, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, zone).Date);
}
