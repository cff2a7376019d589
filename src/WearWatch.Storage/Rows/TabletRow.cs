namespace WearWatch.Storage.Rows;

/// <summary>A browser that an administrator marked as shared: people may switch on it by PIN.</summary>
public sealed class TabletRow
{
    public int Id { get; init; }

    /// <summary>Where it hangs, such as <c>Press line</c>.</summary>
    public required string Name { get; init; }

    public required string MarkedBy { get; init; }

    public DateTimeOffset MarkedAt { get; init; }

    /// <summary>When the mark was withdrawn; null while PINs work on it.</summary>
    public DateTimeOffset? WithdrawnAt { get; set; }
}
