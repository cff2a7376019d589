using WearWatch.Phrases;

namespace WearWatch.Rounds;

/// <summary>
/// When a chain is to be looked at: at least monthly, since elongation tells nothing of cracks, rust and dry joints; a chain that
/// lifts or holds a load on each day of use.
/// </summary>
/// <remarks>
/// Monthly: common practice. Daily: 29 CFR 1910.178(q)(7) of trucks; of hoists and slings common practice. A lifting chain's
/// thorough examination has its own dates, by local law, and no look stands in for it.
/// </remarks>
public static class InspectionDue
{
    /// <summary>The longest time between two looks at a chain that does not lift.</summary>
    public static TimeSpan Interval { get; } = TimeSpan.FromDays(30);

    private static readonly Phrase Monthly = $"at least once a month (common practice)";
    private static readonly Phrase Daily = $"each day of use, since it lifts or holds a load";

    /// <summary>The task for a chain.</summary>
    /// <param name="lastLookAt">When it was last looked at, or fitted; null when neither is recorded.</param>
    /// <param name="holdsLoad">Whether it lifts or holds a load.</param>
    /// <param name="now">The moment for which it is asked.</param>
    public static RoundTask For(DateTimeOffset? lastLookAt, bool holdsLoad, DateTimeOffset now)
    {
        var words = holdsLoad ? Daily : Monthly;
        return lastLookAt is { } last
            ? new(RoundTaskKind.Inspect, last + (holdsLoad ? TimeSpan.FromDays(1) : Interval), words)
            : new(RoundTaskKind.Inspect, now, $"no inspection is recorded; {words}");
    }
}
