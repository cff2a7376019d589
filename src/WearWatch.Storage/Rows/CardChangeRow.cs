namespace WearWatch.Storage.Rows;

/// <summary>One field of a chain's card that was changed: by whom, when and why. Rows are only ever added.</summary>
/// <remarks>From the card as it is, going back over its changes, any earlier state of it can be told.</remarks>
public sealed class CardChangeRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    public DateTimeOffset At { get; init; }

    /// <summary>A person, or a file with its line.</summary>
    public required string By { get; init; }

    /// <summary>The column of chains.csv; <c>chain</c> for the chain's entry into the register.</summary>
    public required string Field { get; init; }

    /// <summary>What stood there, as a file would have it; empty for nothing.</summary>
    public required string From { get; init; }

    /// <summary>What stands there since.</summary>
    public required string To { get; init; }

    public string Why { get; init; } = "";
}
