namespace WearWatch.Planning.Windows;

/// <summary>A planned shutdown of one line, in which chains can be swapped.</summary>
/// <remarks>
/// Windows that name the same crew and begin on the same day of plant time share that crew's hours: the largest of the hours
/// given counts once. A window without a crew's name has its hours to itself.
/// </remarks>
public sealed record ShutdownWindow
{
    /// <summary>What tells it from every other window; stays the same when the plan is made again.</summary>
    public required string Id { get; init; }

    /// <summary>The line that stands still.</summary>
    public required string Line { get; init; }

    /// <summary>When it begins, with the plant's own offset from UTC.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>How long the line stands still; more than zero and at most 60 days.</summary>
    public required TimeSpan Length
    {
        get;
        init => field = value > TimeSpan.Zero && value <= TimeSpan.FromDays(60)
            ? value
            : throw new ArgumentOutOfRangeException(
                nameof(value), value, "A shutdown lasts more than nothing and at most 60 days.");
    }

    /// <summary>Who works in it, or empty.</summary>
    public string Crew { get; init; } = "";

    /// <summary>The hours of work that the crew can give: people times hours.</summary>
    public required double CrewHours
    {
        get;
        init => field = value is >= 0 and <= 100_000
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "Crew hours lie between 0 and 100,000.");
    }

    /// <summary>When the line starts again.</summary>
    public DateTimeOffset End => Start + Length;

    /// <summary>The crew's turn whose hours it draws on.</summary>
    public string CrewTurn => Crew.Length == 0 ? Id : FormattableString.Invariant($"{Crew} {Start:yyyy-MM-dd}");
}
