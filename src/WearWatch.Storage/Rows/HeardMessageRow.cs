namespace WearWatch.Storage.Rows;

/// <summary>One of the last messages of a foreign topic, to be looked at. Few are kept, and none for long.</summary>
public sealed class HeardMessageRow
{
    public required string Topic { get; init; }

    /// <summary>Its place among the few of its topic; the next one takes the oldest one's.</summary>
    public int Place { get; init; }

    public required byte[] Payload { get; init; }

    public DateTimeOffset At { get; init; }
}
