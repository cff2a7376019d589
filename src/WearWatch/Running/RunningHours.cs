using System.Globalization;

namespace WearWatch.Running;

/// <summary>Hours that a chain has run: a duration on the machine's own clock, which stands still when the line does.</summary>
/// <remarks>
/// It has no date, time zone or shift. <see cref="ProductionCalendar"/> turns it into dates. It may be negative as a difference.
/// </remarks>
/// <param name="Hours">The number of hours.</param>
public readonly record struct RunningHours(double Hours) : IComparable<RunningHours>
{
    /// <summary>No running at all.</summary>
    public static RunningHours Zero => default;

    /// <inheritdoc/>
    public int CompareTo(RunningHours other) => Hours.CompareTo(other.Hours);

    /// <summary>The later of two counts, or the longer of two durations.</summary>
    public static RunningHours Max(RunningHours left, RunningHours right) => left > right ? left : right;

    /// <summary>The sum of two durations.</summary>
    public static RunningHours operator +(RunningHours left, RunningHours right) => new(left.Hours + right.Hours);

    /// <summary>The running hours from <paramref name="right"/> to <paramref name="left"/>.</summary>
    public static RunningHours operator -(RunningHours left, RunningHours right) => new(left.Hours - right.Hours);

    /// <summary>Whether the left is shorter.</summary>
    public static bool operator <(RunningHours left, RunningHours right) => left.Hours < right.Hours;

    /// <summary>Whether the left is longer.</summary>
    public static bool operator >(RunningHours left, RunningHours right) => left.Hours > right.Hours;

    /// <summary>Whether the left is not longer.</summary>
    public static bool operator <=(RunningHours left, RunningHours right) => left.Hours <= right.Hours;

    /// <summary>Whether the left is not shorter.</summary>
    public static bool operator >=(RunningHours left, RunningHours right) => left.Hours >= right.Hours;

    /// <summary>The hours with their unit, for a log line.</summary>
    public override string ToString() => Hours.ToString("0.#", CultureInfo.InvariantCulture) + " h";
}
