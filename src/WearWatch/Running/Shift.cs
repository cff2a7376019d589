namespace WearWatch.Running;

/// <summary>A stretch of planned production that comes back every week.</summary>
/// <param name="Day">The weekday on which it begins, in plant time.</param>
/// <param name="Start">The wall-clock time at which it begins.</param>
/// <param name="Length">How long it lasts, over midnight if need be; more than zero and at most 24 h.</param>
public sealed record Shift(DayOfWeek Day, TimeOnly Start, TimeSpan Length)
{
    /// <summary>How long it lasts; more than zero and at most 24 h.</summary>
    public TimeSpan Length { get; } = Length > TimeSpan.Zero && Length <= TimeSpan.FromHours(24)
        ? Length
        : throw new ArgumentOutOfRangeException(nameof(Length), Length, "A shift lasts more than 0 and at most 24 hours.");
}
