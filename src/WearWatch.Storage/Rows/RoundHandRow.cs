namespace WearWatch.Storage.Rows;

/// <summary>
/// A person took a line's round of a day, or gave it back. Rows are only ever added; the newest of a line and day governs.
/// </summary>
public sealed class RoundHandRow
{
    public long Id { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>The day in the plant.</summary>
    public DateOnly Day { get; init; }

    public required string Line { get; init; }

    public required string Person { get; init; }

    /// <summary>Whether the person gave it back.</summary>
    public bool GivenBack { get; init; }

    public DateTimeOffset At { get; init; }
}
