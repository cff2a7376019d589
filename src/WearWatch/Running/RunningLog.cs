namespace WearWatch.Running;

/// <summary>A stretch of time with the hours that a line really ran in it.</summary>
/// <param name="From">Its beginning.</param>
/// <param name="To">Its end, later.</param>
/// <param name="Hours">Running hours in it, at least zero.</param>
/// <param name="IsJump">Whether a counter was set or began again in it, so that the calendar stood in for some of the
/// hours.</param>
public readonly record struct RunStretch(DateTimeOffset From, DateTimeOffset To, double Hours, bool IsJump = false);

/// <summary>What is known of when a line really ran. It takes the place of the calendar for the time that it covers.</summary>
/// <param name="stretches">The stretches by time, none over another.</param>
public sealed class RunningLog(IReadOnlyList<RunStretch> stretches)
{
    /// <summary>Nothing is known.</summary>
    public static RunningLog Empty { get; } = new([]);

    /// <summary>The stretches by time.</summary>
    public IReadOnlyList<RunStretch> Stretches { get; } = stretches;

    /// <summary>The running hours between two moments: as recorded, and as planned where nothing is recorded.</summary>
    /// <param name="from">The beginning.</param>
    /// <param name="to">The end.</param>
    /// <param name="planned">The hours that are planned between two moments.</param>
    public double Between(DateTimeOffset from, DateTimeOffset to, Func<DateTimeOffset, DateTimeOffset, double> planned)
    {
        var (hours, at) = (0.0, from);
        foreach (var stretch in Stretches)
        {
            if (stretch.To <= at) continue;
            if (stretch.From >= to) break;
            if (stretch.From > at) hours += planned(at, stretch.From);
            var (begin, end) = (stretch.From > at ? stretch.From : at, stretch.To < to ? stretch.To : to);
            hours += stretch.Hours * ((end - begin) / (stretch.To - stretch.From));
            at = end;
        }

        return at < to ? hours + planned(at, to) : hours;
    }

    /// <summary>The share of the time between two moments that is recorded, 0 to 1.</summary>
    public double CoverOf(DateTimeOffset from, DateTimeOffset to) => Stretches.Sum(s =>
        Math.Max(0, ((s.To < to ? s.To : to) - (s.From > from ? s.From : from)).TotalHours)) / (to - from).TotalHours;
}
