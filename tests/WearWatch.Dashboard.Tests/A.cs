using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests;

/// <summary>Test data with defaults: a test states only what it is about.</summary>
public static class A
{
    /// <summary>A Wednesday noon.</summary>
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    public static PlantTime Time(string zone = "UTC") => new(Now, TimeZoneInfo.FindSystemTimeZoneById(zone));

    public static DateTimeOffset In(double days) => Now.AddDays(days);

    public static ChainRow Chain(string name = "K-1", string line = "Press", string position = "infeed", string type = "16B-1",
        ChainFamily? family = null, double pitchMm = 25.4) =>
        new()
        {
            Name = name,
            Line = line,
            Position = position,
            ChainType = type,
            Family = family ?? ChainFamily.Usual,
            PitchMm = pitchMm,
            Pitches = 120,
            FittedCounterH = 0,
        };

    public static ForecastRow Forecast(int chainId, Condition condition = Condition.WithinLimit, double? earlyInDays = 100,
        double? elongationPct = 1.2, double ratePct = 0.2, long? lastReadingId = null, double? oilInDays = null, bool latest =
            true) => new()
            {
                ChainId = chainId,
                MadeAt = Now,
                IsLatest = latest,
                LastReadingId = lastReadingId,
                ModelVersion = "broad prior",
                ReadingsUsed = 4,
                HoursAtLastReading = 6000,
                HoursNow = 6100,
                ElongationPct = elongationPct,
                ElongationSdPct = 0.05,
                RatePctPer1000H = ratePct,
                LogRateSd = 0.3,
                LimitPct = 3,
                LimitReason = LimitReason.General,
                LimitSource = "[8]",
                ProbabilityPassed = 0,
                PercentilesH = Percentiles(),
                EarlyDate = earlyInDays is { } early ? In(early) : null,
                MiddleDate = earlyInDays is { } middle ? In(middle + 60) : null,
                LateDate = earlyInDays is { } late ? In(late + 150) : null,
                Condition = condition,
                NextOilingAt = oilInDays is { } oil ? In(oil) : null,
            };

    /// <summary>Hours left at 1 to 99 %, even from first to last.</summary>
    public static IReadOnlyList<double> Percentiles(double first = 1000, double last = 9000) =>
        [.. Enumerable.Range(0, 99).Select(i => first + (last - first) * i / 98)];

    public static ReadingRow Reading(
        int chainId, string key = "r-1", double lengthMm = 1234, int pitches = 48, DateTimeOffset? takenAt = null,
        double? counterH = 6000, ReadingStanding standing = ReadingStanding.Accepted, string why = "") => new()
        {
            ChainId = chainId,
            Key = key,
            TakenAt = takenAt ?? In(-4),
            CounterH = counterH,
            Tool = Tool.Tape,
            Pitches = pitches,
            LengthMm = lengthMm,
            Written = FormattableString.Invariant($"{lengthMm}"),
            Standing = standing,
            WhyWaiting = Phrase.Verbatim(why),
            ToldBy = "test",
            ReceivedAt = In(-4),
        };

    public static Assessment Assessment(
        ChainCard? card = null, IReadOnlyList<JudgedObservation>? observations = null, double? elongationPct = 1.2,
        double hoursAtLastReading = 6000, double hoursNow = 6000, IReadOnlyList<double>? percentiles = null, double passed = 0,
        Condition condition = Condition.WithinLimit, IReadOnlyList<HeldBackReading>? heldBack = null) => new()
        {
            Card = card ?? Chain().ToCard(),
            History = new ChainHistory([new FittedChain(true, hoursNow, false, [])], heldBack ?? []),
            Constants = WearConstants.Default,
            Prior = WearPrior.Broad,
            Observations = observations ?? [Observed(2000, 0.5, 0), Observed(4000, 0.85, 1), Observed(6000, 1.2, 2)],
            HoursAtLastReading = hoursAtLastReading,
            HoursNow = hoursNow,
            ElongationPercent = elongationPct,
            ElongationStandardDeviationPercent = elongationPct is null ? null : 0.05,
            RatePercentPer1000Hours = 0.2,
            LogRateStandardDeviation = 0.3,
            Limit = new ReplacementLimit(3, LimitReason.General, "docs/references.md [8]"),
            Forecast = new WearForecast
            {
                LimitPercent = 3,
                ProbabilityPassed = passed,
                PercentilesHours = percentiles ?? Percentiles(),
            },
            Condition = condition,
            Notices = [],
            Carried = new CarriedTrack(WearTrack.AtFitting(WearPrior.Broad), []),
            View = new WearNow
            {
                ElongationPercent = elongationPct ?? 0,
                ElongationDeviationPercent = 0.05,
                LogRate = Math.Log(0.2),
                LogRateDeviation = 0.3,
                ProbabilityLastMisread = 0.01,
                ProbabilityRateRose = 0,
                ProbabilityAccelerating = 0,
            },
        };

    public static JudgedObservation Observed(double hours, double percent, int index, double misread = 0.01) =>
        new(new Observation(hours, percent, 0.05, index), misread, 0) { TrackPercent = percent, RatePercentPer1000Hours = 0.2 };

    public static ProductionCalendar RoundTheClock => ProductionCalendar.AlwaysRunning;
}
