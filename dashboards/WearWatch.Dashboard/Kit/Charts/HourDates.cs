namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>Which day belongs to which running hour of a chain: known at some hours, even between them.</summary>
public sealed class HourDates
{
    private static readonly int[] MonthSteps = [1, 2, 3, 6, 12, 24, 60, 120];

    private readonly List<(double Hours, DateTimeOffset At)> known = [];

    /// <param name="anchors">Hours and their moments; one that goes back in either is left out.</param>
    public HourDates(IEnumerable<(double Hours, DateTimeOffset At)> anchors)
    {
        foreach (var anchor in anchors.OrderBy(a => a.Hours).ThenBy(a => a.At))
            if (known.Count == 0 || (anchor.Hours > known[^1].Hours && anchor.At > known[^1].At)) known.Add(anchor);
    }

    /// <summary>Whether nothing can be dated.</summary>
    public bool IsEmpty => known.Count < 2;

    /// <summary>The moment of an hour; null before the first and after the last that is known.</summary>
    public DateTimeOffset? At(double hours)
    {
        var next = known.FindIndex(k => k.Hours >= hours);
        if (next < 0) return null;
        if (known[next].Hours == hours) return known[next].At;
        if (next == 0) return null;
        var (a, b) = (known[next - 1], known[next]);
        return a.At + (hours - a.Hours) / (b.Hours - a.Hours) * (b.At - a.At);
    }

    /// <summary>The hour of a moment; null before the first and after the last that is known.</summary>
    public double? HoursAt(DateTimeOffset at)
    {
        var next = known.FindIndex(k => k.At >= at);
        if (next < 0) return null;
        if (known[next].At == at) return known[next].Hours;
        if (next == 0) return null;
        var (a, b) = (known[next - 1], known[next]);
        return a.Hours + (at - a.At) / (b.At - a.At) * (b.Hours - a.Hours);
    }

    /// <summary>Firsts of months within a stretch of hours, at most so many, and whether they are whole years.</summary>
    public (IReadOnlyList<(double Hours, DateOnly Day)> Ticks, bool Years) TicksOf(double from, double to, int most)
    {
        if (IsEmpty) return ([], false);
        var first = At(Math.Max(from, known[0].Hours)) ?? known[0].At;
        var last = At(Math.Min(to, known[^1].Hours)) ?? known[^1].At;
        foreach (var step in MonthSteps)
        {
            var ticks = Firsts(first, last, step).ToList();
            if (ticks.Count <= most) return (ticks, step >= 12);
        }

        return ([], true);
    }

    private IEnumerable<(double Hours, DateOnly Day)> Firsts(DateTimeOffset first, DateTimeOffset last, int step)
    {
        var month = first.Year * 12 + first.Month - 1;
        for (month += (step - month % step) % step; ; month += step)
        {
            var day = new DateOnly(month / 12, month % 12 + 1, 1);
            var at = new DateTimeOffset(day.ToDateTime(default), TimeSpan.Zero);
            if (at > last) yield break;
            if (HoursAt(at) is { } hours) yield return (hours, day);
        }
    }
}
