using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>
/// What the hours that can have passed say of an hour counter: by the dates, when the line runs and how its counters went so far;
/// without dates by how far the counter usually goes from reading to reading.
/// </summary>
/// <remarks>
/// With dates the hours since the last dated counter are E r, E by the production calendar or the record of running, r the share
/// of
/// it that this counter and its neighbours on the line went: normal about E r, one in fifty three times as wide, four in ten
/// thousand spread evenly over all hours of the clock, and nothing beyond the clock. Without dates ln(hours/usual gap) is
/// Student's t
/// with 3 degrees of freedom, since rounds are skipped. The shares and widths are common practice; docs/gauging.md.
/// </remarks>
/// <param name="card">The chain.</param>
/// <param name="readings">The readings before, in the order in which they were taken.</param>
/// <param name="events">The chain's events.</param>
/// <param name="calendar">When its line runs, with what is recorded of it.</param>
/// <param name="neighbours">How far the counters of the neighbours on the same line went.</param>
public sealed class CounterClock(
    ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar,
    IReadOnlyList<HoursRun>? neighbours = null)
{
    /// <summary>A line that stood, or ran through its holidays: any hours of the clock are as likely.</summary>
    private const double UnplannedShare = 0.0004;

    /// <summary>Weeks that went otherwise than the others.</summary>
    private const double WideShare = 0.02;
    private const double WideFactor = 3;

    /// <summary>Another place of the same visit, where no dates tell.</summary>
    private const double SameVisitShare = 0.05;
    private const double SameVisitHours = 12;

    /// <summary>Dates are told to the day, and clocks and counters by people.</summary>
    private const double DayHours = 25;
    private const double ClockTolerance = 0.002;

    /// <summary>ln of a density that stands for "cannot be".</summary>
    internal const double Impossible = -60;

    private const double DatesToTheDayHours = 10;
    private const double PriorRatioDeviation = 0.25;
    private const double PriorWeight = 1;
    private const double LeastRatioDeviation = 0.03;
    private const double OverlapThatTells = 0.5;
    private const double OverlapWeight = 20;
    private const int RunsThatTell = 12;
    private const double UnknownGapHours = 500;
    private const double UnknownGapSpread = 1.2;
    private const double LeastGapSpread = 0.3;

    private readonly IReadOnlyList<GaugedReading> gauged = GaugedReading.All(card, readings);

    /// <summary>
    /// Whether what is entered may have happened at any time before as well, as an event without a date: then any counter up to
    /// the last is as likely.
    /// </summary>
    public bool MayBeBefore { get; init; }

    /// <summary>The chain's name.</summary>
    public string Chain => card.Name;

    /// <summary>How far its counter went between the dated readings before an entry.</summary>
    public IReadOnlyList<HoursRun> RunsBefore(Reading entry) => Place(Standing(entry))?.Runs ?? [];

    /// <summary>What the counter is expected to show at an entry; null where nothing was told before it.</summary>
    public ExpectedCounter? Expect(Reading entry) =>
        Place(Standing(entry)) is { } place ? Expect(place, entry.TakenAt) : null;

    /// <summary>ln of the probability density of the entry's counter, an hour; null where nothing was told before it.</summary>
    public double? LogDensity(Reading entry)
    {
        if (entry.Counter is null || Place(entry) is not { } place) return null;
        if (place.SinceLastHours is not { } hours || place.IsPastTheNext)
            return MayBeBefore && entry.Counter.Value.Hours < place.LastH ? -Math.Log(place.LastH) : Impossible;
        var expected = Expect(place, entry.TakenAt);
        return expected.MostH is { } most
            ? place.LastH + hours > most ? Impossible : Math.Log(Dated(hours, expected))
            : Math.Log(Undated(hours, expected));
    }

    private CounterPlace? Place(Reading entry) => CounterPlace.Of(card, gauged, events, entry, calendar);

    /// <summary>The entry with a counter that stands where its date and order put it, whatever was told.</summary>
    private Reading Standing(Reading entry) => entry with { Counter = entry.Counter ?? LastToldBefore(entry) };

    private RunningHours? LastToldBefore(Reading entry) => readings
        .LastOrDefault(r => r.Counter is not null && (r.TakenAt is not { } at || entry.TakenAt is not { } now || at <= now))
        ?.Counter ?? card.FittedCounter;

    private ExpectedCounter Expect(CounterPlace place, DateTimeOffset? takenAt)
    {
        if (takenAt is { } to && place.DatedAt is { } from && to >= from)
        {
            var planned = calendar.Between(from, to).Hours;
            var (ratio, deviation) = Ratio(place, from, to);
            var most = (to - from).TotalHours * (1 + ClockTolerance) + DayHours - place.HoursFromDated;
            var about = Math.Clamp(planned * ratio - place.HoursFromDated, 0, Math.Max(0, most));
            return new(place.LastH, place.LastH + about, Math.Sqrt(Square(deviation * planned) + Square(DatesToTheDayHours)),
                place.LastH + most);
        }

        var usual = Gap(place);
        return new(place.LastH, place.LastH + usual.Hours, usual.Hours * usual.Spread, null);
    }

    /// <summary>The share of the calendar's hours that the counter goes, and how sure that is.</summary>
    private (double Mean, double Deviation) Ratio(CounterPlace place, DateTimeOffset from, DateTimeOffset to)
    {
        var most = 1.05 / calendar.Utilisation;
        List<(double Ratio, double Weight)> told =
        [
            .. place.Runs.Where(r => r.CalendarHours > 24).TakeLast(RunsThatTell).Select(r => (r.Ratio, Weight: 1.0)),
            .. (neighbours ?? []).Where(r => r.CalendarHours > 24 && r.CoverOf(from, to) > OverlapThatTells)
                .Select(r => (r.Ratio, Weight: OverlapWeight)),
        ];
        told = [.. told.Where(t => t.Ratio <= most)];
        var weight = PriorWeight + told.Sum(t => t.Weight);
        var mean = (PriorWeight + told.Sum(t => t.Ratio * t.Weight)) / weight;
        var variance = (PriorWeight * Square(PriorRatioDeviation) + told.Sum(t => t.Weight * Square(t.Ratio - mean))) / weight;
        return (mean, Math.Max(LeastRatioDeviation, Math.Sqrt(variance)));
    }

    private static (double Hours, double Spread) Gap(CounterPlace place)
    {
        double[] logs = [.. place.Gaps.Where(g => g > SameVisitHours).Select(g => Math.Log(g)).Order()];
        var middle = logs.Length == 0 ? Math.Log(UnknownGapHours) : logs[logs.Length / 2];
        double[] off = [.. logs.Select(l => Math.Abs(l - middle)).Order()];
        var own = off.Length < 3 ? UnknownGapSpread : Math.Max(LeastGapSpread, 1.4826 * off[off.Length / 2]);
        return (Math.Exp(middle), (own * logs.Length + UnknownGapSpread) / (logs.Length + 1));
    }

    private static double Dated(double hours, ExpectedCounter expected) =>
        (1 - UnplannedShare) * Bell((hours - (expected.AboutH - expected.LastH)) / expected.DeviationHours)
            / expected.DeviationHours
        + UnplannedShare / (expected.MostH!.Value - expected.LastH);

    private static double Undated(double hours, ExpectedCounter expected)
    {
        var usual = expected.AboutH - expected.LastH;
        var spread = expected.DeviationHours / usual;
        var ahead = Math.Max(hours, 1);
        return (1 - SameVisitShare) * Student3(Math.Log(ahead / usual) / spread) / spread / ahead
            + (hours <= SameVisitHours ? SameVisitShare / SameVisitHours : 0);
    }

    private static double Bell(double z) =>
        ((1 - WideShare) * Math.Exp(-z * z / 2) + WideShare / WideFactor * Math.Exp(-z * z / (2 * WideFactor * WideFactor)))
            / Math.Sqrt(2 * Math.PI);

    private static double Student3(double z) => 2 / (Math.PI * Math.Sqrt(3)) * Math.Pow(1 + z * z / 3, -2);

    private static double Square(double x) => x * x;
}
