using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>Where a counter stands among those that were told of a position before it.</summary>
internal readonly record struct CounterPlace
{
    /// <summary>What the counter showed last before it.</summary>
    public required double LastH { get; init; }

    /// <summary>Hours from that to this entry; null where the counter fell and no change of it is recorded.</summary>
    public required double? SinceLastHours { get; init; }

    /// <summary>When the counter was last told with a date; null when it never was.</summary>
    public required DateTimeOffset? DatedAt { get; init; }

    /// <summary>Hours that the counter went from then to <see cref="LastH"/>.</summary>
    public required double HoursFromDated { get; init; }

    /// <summary>Whether an entry that was taken later shows less, so that this one cannot be.</summary>
    public required bool IsPastTheNext { get; init; }

    /// <summary>The hours between the readings before it, in order.</summary>
    public required IReadOnlyList<double> Gaps { get; init; }

    /// <summary>How far the counter went between the dated entries before it.</summary>
    public required IReadOnlyList<HoursRun> Runs { get; init; }

    /// <summary>Places an entry; null where no counter was told before it.</summary>
    public static CounterPlace? Of(
        ChainCard card, IReadOnlyList<GaugedReading> before, IReadOnlyList<ChainEvent> events, Reading entry,
        ProductionCalendar calendar)
    {
        var told = PositionLog.Of(card, [.. before, GaugedReading.All(card, [entry])[0]], events);
        var log = MissingCounters.Fill(told, calendar);
        var hours = HourLine.Of(log).Hours;
        var here = Array.FindIndex(log, e => e.ReadingIndex == before.Count);
        var last = Earlier(here, i => told[i].After is not null && hours[i] is not null);
        if (told[here].Before is not { } counter) return null;
        var next = Enumerable.Range(here + 1, log.Length - here - 1)
            .FirstOrDefault(i => told[i].IsReset || (told[i] is { Kind: null, Before: not null } && hours[i] is not null), -1);
        var isPastTheNext = hours[here] is null || (next >= 0 && !told[next].IsReset
            && told[next].Before < counter - HourLine.RoundingHours);
        if (last < 0) return next >= 0 && isPastTheNext ? BeforeAll(told[next].Before!.Value) : null;

        var dated = Earlier(here, i => told[i] is { After: not null, At: not null } && hours[i] is not null);
        return new CounterPlace
        {
            LastH = told[last].After!.Value,
            SinceLastHours = Enumerable.Range(last + 1, here - last - 1).Any(i => told[i].IsReset)
                ? hours[here] - hours[last]
                : SinceLast(told[last].After!.Value, counter, hours[here] - hours[last]),
            DatedAt = dated < 0 ? null : told[dated].At,
            HoursFromDated = dated < 0 ? 0 : hours[last]!.Value - hours[dated]!.Value,
            IsPastTheNext = isPastTheNext,
            Gaps = [.. Steps(i => told[i].ReadingIndex >= 0).Select(s => hours[s.To]!.Value - hours[s.From]!.Value)],
            Runs = [.. Steps(i => told[i] is { Before: not null, At: not null }).Select(Run).Where(r => r.CalendarHours > 0)],
        };

        int Earlier(int from, Func<int, bool> fits)
        {
            for (var i = from - 1; i >= 0; i--) if (fits(i)) return i;
            return -1;
        }

        IEnumerable<(int From, int To)> Steps(Func<int, bool> fits)
        {
            int[] steps = [.. Enumerable.Range(0, here).Where(i => hours[i] is not null && fits(i))];
            return steps.Zip(steps.Skip(1)).Where(s => hours[s.Second] > hours[s.First]);
        }

        HoursRun Run((int From, int To) step) => new(told[step.From].At!.Value, told[step.To].At!.Value,
            hours[step.To]!.Value - hours[step.From]!.Value,
            calendar.Between(told[step.From].At!.Value, told[step.To].At!.Value).Hours);
    }

    /// <summary>Dated before all others and yet with a higher counter than the first of them.</summary>
    private static CounterPlace BeforeAll(double firstH) => new()
    {
        LastH = firstH,
        SinceLastHours = null,
        DatedAt = null,
        HoursFromDated = 0,
        IsPastTheNext = true,
        Gaps = [],
        Runs = [],
    };

    /// <summary>Hours to a counter that went on, or rolled over; null for a fall that nothing explains.</summary>
    private static double? SinceLast(double last, double counter, double? onTheLine) =>
        counter >= last - HourLine.RoundingHours ? Math.Max(0, counter - last)
        : onTheLine is { } hours && HourLine.IsRollOver(last, counter, hours) ? hours
        : null;
}
