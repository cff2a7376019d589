namespace WearWatch.Dashboard.Administration.Arrivals;

/// <summary>Whether a source that was used to send is silent for longer than it ever was.</summary>
public static class Lateness
{
    private static readonly TimeSpan Least = TimeSpan.FromHours(2);

    /// <summary>
    /// How long it has been silent; null while that is within its habit: twice its longest silence, and two hours at least.
    /// </summary>
    /// <param name="hours">The hours in which it sent, by time.</param>
    /// <param name="now">The moment.</param>
    public static TimeSpan? Of(IReadOnlyList<DateTimeOffset> hours, DateTimeOffset now)
    {
        if (hours.Count < 2) return null;
        var longest = hours.Zip(hours.Skip(1), (a, b) => b - a).Max();
        var allowed = 2 * longest > Least ? 2 * longest : Least;
        var silent = now - hours[^1].AddHours(1);
        return silent > allowed ? silent : null;
    }
}
