namespace WearWatch.Rounds;

/// <summary>
/// When a chain is to be looked at: at least monthly, since elongation tells nothing of cracks, rust and dry joints.
/// </summary>
/// <remarks>Common practice. A lifting chain's examination by a competent person has its own dates, by local law.</remarks>
public static class InspectionDue
{
    /// <summary>The longest time between two looks.</summary>
    public static TimeSpan Interval { get; } = TimeSpan.FromDays(30);

    /// <summary>The task for a chain.</summary>
    /// <param name="lastLookAt">When it was last looked at, or fitted; null when neither is recorded.</param>
    /// <param name="now">The moment for which it is asked.</param>
    public static RoundTask For(DateTimeOffset? lastLookAt, DateTimeOffset now) => lastLookAt is { } last
        ? new(RoundTaskKind.Look, last + Interval, "at least once a month (common practice)")
        : new(RoundTaskKind.Look, now, "no look is recorded yet; at least once a month (common practice)");
}
