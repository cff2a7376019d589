namespace WearWatch.Storage.Rows;

/// <summary>A person's wish to see what is published under some topics, for a while.</summary>
public sealed class ListeningRow
{
    public int Id { get; init; }

    /// <summary>As the broker knows it, with <c>+</c> and <c>#</c>.</summary>
    public required string Filter { get; init; }

    public DateTimeOffset Until { get; init; }

    public required string By { get; init; }
}
