namespace WearWatch.Storage.Rows;

/// <summary>
/// The track of the chain that runs now, so that its next reading costs one step. A conclusion: it can be lost and made again.
/// </summary>
public sealed class TrackRow
{
    public int ChainId { get; init; }

    /// <summary>The knowledge and the build of the program that it belongs to; another one makes it anew.</summary>
    public required string Version { get; set; }

    /// <summary>The last raw reading that it includes; null when it has seen none.</summary>
    public long? LastReadingId { get; set; }

    /// <summary>The track as JSON, its numbers to the bit.</summary>
    public required string State { get; set; }
}
