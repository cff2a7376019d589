using WearWatch.Chains;
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

    private const int WeeksAhead = 30 * 52;

    /// <summary>The picture of a chain.</summary>
    public static WearPicture Of(ChainFacts facts, ChainDates dates, PlantTime time)
    {
        var days = Days(facts, time);
        return Of(facts.Assessment, dates, time) with
        {
            SwapH = facts.Swap?.Start is { } start && start > time.Now
                ? facts.Assessment.HoursNow + facts.Calendar.Between(time.Now, start).Hours
                : null,
            OiledH = Oiled(facts, days),
            Fitted = facts.Assessment.History.Current.FittingKnown && days.At(0) is { } fitted
                ? T[$"fitted {time.DateOf(fitted)}"]
                : null,
            Days = days,
        };
    }

    /// <summary>The hours of the chain that runs now at which it was lubricated.</summary>
    private static IReadOnlyList<double> Oiled(ChainFacts facts, HourDates days) =>
        [.. facts.Events.Where(e => e.Kind == ChainEventKind.Oiling && e.OilAmountMl != 0 && e.At is not null)
            .Select(e => days.HoursAt(e.At!.Value)).OfType<double>()];

    /// <summary>Readings say which day belongs to which hour; ahead the average week does.</summary>
    private static HourDates Days(ChainFacts facts, PlantTime time)
    {
        var (assessment, week) = (facts.Assessment, facts.Calendar.PerWeek.Hours);
        var seen = assessment.Observations.Select(o => o.Observation)
            .Select(o => (o.HoursSinceFitting, facts.Standing.ElementAtOrDefault(o.ReadingIndex)?.TakenAt))
            .Where(o => o.TakenAt is not null).Select(o => (o.HoursSinceFitting, o.TakenAt!.Value));
        List<(double, DateTimeOffset)> anchors = [.. seen, (assessment.HoursNow, time.Now)];
        var fitted = facts.Events.LastOrDefault(e => e.Kind == ChainEventKind.Replacement)?.At ?? facts.Row.FittedAt;
        if (assessment.History.Current.FittingKnown && fitted is { } at) anchors.Add((0, at));
        if (week > 0) anchors.Add((assessment.HoursNow + week * WeeksAhead, time.Now.AddDays(7 * WeeksAhead)));
        return new HourDates(anchors);
    }

    /// <summary>The picture of an assessment.</summary>
    public static WearPicture Of(Assessment assessment, ChainDates dates, PlantTime time) => new()
    {
        Readings = [.. assessment.Observations.Select(Reading)],
        Track = [.. assessment.Observations.Select(o => new PictureTrack(o.Observation.HoursSinceFitting, o.TrackPercent))],
        Levels = Levels(assessment),
        LimitPercent = assessment.Limit.Percent,
        NowH = assessment.HoursNow,
        HoursAre = assessment.History.Current.FittingKnown
            ? T["running hours since fitting"]
            : T["running hours since the first reading"],
        Dates = (Word(dates.Early, time), Word(dates.Middle, time), Word(dates.Late, time)),
    };

    private static PictureReading Reading(JudgedObservation judged)
    {
        var (hours, percent, scatter, _) = judged.Observation;
        return new PictureReading(
            hours, percent, 2 * scatter, judged.ProbabilityMisread > 0.5,
            T[$"{Show.Percent(percent)} ± {Show.Percent(2 * scatter)} at {Show.Hours(hours)}"]
            + (judged.ProbabilityMisread >= 0.05 ? ", " + T[$"{Show.Chance(judged.ProbabilityMisread)} misread"] : ""));
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
