using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>Puts a chain's wear chart together from its assessment.</summary>
public static class ChainPicture
{
    /// <summary>Enough for a smooth edge; each costs a drawing of the forecast, about a millisecond.</summary>
    private const int Steps = 8;

    /// <summary>The picture of a chain.</summary>
    public static WearPicture Of(ChainFacts facts, ChainDates dates, PlantTime time) => Of(facts.Assessment, dates, time) with
    {
        SwapH = facts.Swap?.Start is { } start && start > time.Now
            ? facts.Assessment.HoursNow + facts.Calendar.Between(time.Now, start).Hours
            : null,
    };

    /// <summary>The picture of an assessment.</summary>
    public static WearPicture Of(Assessment assessment, ChainDates dates, PlantTime time) => new()
    {
        Readings = [.. assessment.Observations.Select(Reading)],
        Track = [.. assessment.Observations.Select(o => new PictureTrack(o.Observation.HoursSinceFitting, o.TrackPercent))],
        Levels = Levels(assessment),
        LimitPercent = assessment.Limit.Percent,
        NowH = assessment.HoursNow,
        HoursAre = assessment.History.Current.FittingKnown
            ? "running hours since fitting"
            : "running hours since the first reading",
        Dates = (Word(dates.Early, time), Word(dates.Middle, time), Word(dates.Late, time)),
    };

    private static PictureReading Reading(JudgedObservation judged)
    {
        var (hours, percent, scatter, _) = judged.Observation;
        return new PictureReading(
            hours, percent, 2 * scatter, judged.ProbabilityMisread > 0.5,
            $"{Show.Percent(percent)} ± {Show.Percent(2 * scatter)} at {Show.Hours(hours)}"
            + (judged.ProbabilityMisread >= 0.05 ? $", {Show.Chance(judged.ProbabilityMisread)} misread" : ""));
    }

    /// <summary>When each elongation on the way to the limit is reached, the limit last.</summary>
    private static IReadOnlyList<PictureLevel> Levels(Assessment assessment)
    {
        var start = assessment.ElongationPercent is { } elongation
            ? elongation - 2 * (assessment.ElongationStandardDeviationPercent ?? 0)
            : assessment.Prior.MeanStartPercent;
        var limit = assessment.Limit.Percent;
        if (start >= limit) return [];
        return
        [
            .. Enumerable.Range(0, Steps).Select(step => start + (limit - start) * step / Steps)
                .Select(percent => Level(percent, assessment, WearFilter.Default.Forecast(assessment.Track, percent))),
            Level(limit, assessment, assessment.Forecast),
        ];
    }

    private static PictureLevel Level(double percent, Assessment assessment, WearForecast forecast)
    {
        double At(int quantile) => assessment.HoursAtLastReading + (forecast.Quantile(quantile) ?? double.PositiveInfinity);
        return new PictureLevel(percent, At(5), At(25), At(50), At(75), At(95));
    }

    private static string? Word(DateTimeOffset? date, PlantTime time) => date is { } at ? time.Day(at) : null;
}
