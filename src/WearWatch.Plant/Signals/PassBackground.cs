using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Signals.Passes;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>What is known of a chain before a day of its passes is looked at.</summary>
/// <param name="Expected">What the day is expected to say; null when nothing is known.</param>
/// <param name="Course">The earlier days at the same sensors, the last tape, and how fast the chain wears.</param>
internal sealed record PassBackground(PassExpectation? Expected, PassCourse Course)
{
    /// <summary>How far tape and sensors of a plant may differ over a chain, in percent. Common practice.</summary>
    private const double TapeAgainstSensorsPercent = 0.1;

    /// <summary>No chain that still runs wears faster, in percent a day: 3 % in six weeks. Common practice.</summary>
    private const double FastestPercentPerDay = 0.07;

    /// <summary>The least that days differ by, in percent: the frame's temperature.</summary>
    private const double LeastDayToDayPercent = 0.003;

    private const int LongestCourse = 30;

    /// <summary>A day on the course's scale.</summary>
    public static double DayOf(PlantDay day) => DayOf(day.Start);

    /// <summary>What was known before a day.</summary>
    public static async Task<PassBackground> BeforeAsync(
        WearDb db, ChainRow chain, SensorPairRow set, PlantDay day, CancellationToken ct)
    {
        var changed = (await db.StandingEventsAsync(chain.Id, ct))
            .Where(e => e.Kind == ChainEventKind.Replacement && e.At <= day.End).Max(e => e.At);
        var since = changed > set.From ? changed.Value : set.From;
        var days = (await db.PassDays.AsNoTracking()
            .Where(p => p.ChainId == chain.Id && p.Day < day.Start && p.Day >= since && p.ElongationPct != null)
            .OrderByDescending(p => p.Day).Take(LongestCourse).ToListAsync(ct)).OrderBy(p => p.Day).ToList();
        var fastest = await FastestAsync(db, chain.Id, since, ct);
        var pair = set.ToPair(chain.PitchMm);
        var course = new PassCourse([.. days.Select(p => Told(pair, p))], fastest)
        {
            Tape = await TapeAsync(db, chain, changed, day, fastest, ct),
        };
        var expected = days.Count > 0
            ? new PassExpectation(
                days[^1].ElongationPct!.Value, days[^1].UncertaintyPct!.Value, (day.Start - days[^1].Day).TotalDays)
            : await ByTrackAsync(db, chain.Id, isFitted: changed is not null, ct);
        return new PassBackground(expected is null ? null : expected with { FastestPercentPerDay = fastest }, course);
    }

    /// <summary>
    /// How fast it wears at most, by the forecast that stood before the sensors had told anything: one that creeps teaches the
    /// later ones its own creep.
    /// </summary>
    private static async Task<double> FastestAsync(WearDb db, int chainId, DateTimeOffset since, CancellationToken ct)
    {
        var forecasts = db.Forecasts.AsNoTracking().Where(f => f.ChainId == chainId);
        var before = await forecasts.Where(f => f.MadeAt <= since).OrderByDescending(f => f.Id).FirstOrDefaultAsync(ct)
            ?? await forecasts.OrderBy(f => f.Id).FirstOrDefaultAsync(ct);
        return before is null
            ? FastestPercentPerDay
            : Math.Min(FastestPercentPerDay, 24 * before.RatePctPer1000H / 1000 * Math.Exp(2 * before.LogRateSd));
    }

    private static PassCourseDay Told(SensorPair pair, PassDayRow row)
    {
        var standing = pair.StandingUncertaintyPercent(row.Pitches!.Value);
        var varying = row.UncertaintyPct!.Value * row.UncertaintyPct.Value - standing * standing;
        return new PassCourseDay(
            DayOf(row.Day), row.ElongationPct!.Value, Math.Sqrt(Math.Max(varying, LeastDayToDayPercent * LeastDayToDayPercent)));
    }

    /// <summary>What the last reading by another tool than sensors lets expect, of the chain that is fitted.</summary>
    private static async Task<PassExpectation?> TapeAsync(
        WearDb db, ChainRow chain, DateTimeOffset? changed, PlantDay day, double fastest, CancellationToken ct)
    {
        var last = (await db.StandingReadingsAsync(chain.Id, ct))
            .LastOrDefault(r => r.Tool != Tool.Sensor && r.TakenAt < day.Start && !(r.TakenAt < changed));
        if (last is null) return null;
        return Gauge.Measure(chain.PitchMm, last.Pitches, last.LengthMm, last.Tool, last.TemperatureC, last.LengthUncertaintyMm)
            is GaugeOutcome.Measured { Elongation: var told }
            ? new PassExpectation(
                told.Percent, Beside(told.StandardUncertaintyPercent), (day.Start - last.TakenAt!.Value).TotalDays)
            {
                FastestPercentPerDay = fastest,
            }
            : null;
    }

    /// <summary>What the track says, else what a new chain is.</summary>
    private static async Task<PassExpectation?> ByTrackAsync(WearDb db, int chainId, bool isFitted, CancellationToken ct)
    {
        var track = await db.Forecasts.AsNoTracking().Where(f => f.ChainId == chainId && f.IsLatest).FirstOrDefaultAsync(ct);
        if (track is null) return null;
        if (track.ElongationPct is not { } elongation) return isFitted ? Fresh(track) : null;
        var now = elongation + track.RatePctPer1000H * (track.HoursNow - track.HoursAtLastReading) / 1000;
        return new PassExpectation(now, Beside(track.ElongationSdPct ?? 0), 1);
    }

    /// <summary>
    /// A chain that was fitted, and that nobody has measured yet: a new one, worn by as much as such chains wear.
    /// </summary>
    private static PassExpectation Fresh(ForecastRow track)
    {
        var worn = track.RatePctPer1000H * track.HoursNow / 1000;
        var asNew = Expectation.NewChain;
        return new PassExpectation(asNew.MeanPercent + worn,
            Math.Sqrt(Math.Pow(asNew.StandardDeviationPercent, 2) + Math.Pow(worn * track.LogRateSd, 2)), 1);
    }

    private static double Beside(double percent) =>
        Math.Sqrt(percent * percent + TapeAgainstSensorsPercent * TapeAgainstSensorsPercent);

    private static double DayOf(DateTimeOffset day) => day.UtcTicks / (double)TimeSpan.TicksPerDay;
}
