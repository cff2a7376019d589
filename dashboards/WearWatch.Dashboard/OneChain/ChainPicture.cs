using WearWatch.Dashboard.Charts;
using WearWatch.Dashboard.Words;
using WearWatch.Wear;

namespace WearWatch.Dashboard.OneChain;

/// <summary>Puts a chain's wear chart together from its assessment.</summary>
public static class ChainPicture
{
    /// <summary>The picture of an assessment.</summary>
    public static WearPicture Of(Assessment assessment, ChainDates dates, PlantTime time) => new()
    {
        Readings = [.. assessment.Observations.Select(Reading)],
        Track = [],
        Levels = Levels(assessment),
        LimitPercent = assessment.Limit.Percent,
        NowH = assessment.HoursNow,
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

    /// <summary>From the last reading to the limit. What is known of the elongation there opens the band.</summary>
    private static IReadOnlyList<PictureLevel> Levels(Assessment assessment)
    {
        var last = assessment.HoursAtLastReading;
        var start = assessment.ElongationPercent ?? assessment.Prior.MeanStartPercent;
        if (start >= assessment.Limit.Percent) return [];
        double At(int percent) => last + (assessment.Forecast.Quantile(percent) ?? double.PositiveInfinity);
        return
        [
            new PictureLevel(start, last, last, last, last, last),
            new PictureLevel(assessment.Limit.Percent, At(5), At(25), At(50), At(75), At(95)),
        ];
    }

    private static string? Word(DateTimeOffset? date, PlantTime time) => date is { } at ? time.Day(at) : null;
}
