namespace WearWatch.Storage.Rows;

/// <summary>How a Sparkplug edge node stands, by its births, deaths and data.</summary>
public sealed class SparkplugNodeRow
{
    public int Id { get; init; }

    public required string Group { get; init; }

    public required string Node { get; init; }

    /// <summary>Whether its last birth was not followed by its death.</summary>
    public bool IsOnline { get; set; }

    /// <summary>Since when it is online or dead; null while neither a birth nor a death came.</summary>
    public DateTimeOffset? Since { get; set; }

    /// <summary>When it last said anything.</summary>
    public DateTimeOffset LastAt { get; set; }

    /// <summary>The number of its session: a death counts for the birth of the same number.</summary>
    public long? BdSeq { get; set; }

    /// <summary>The number of its last message, 0 to 255.</summary>
    public int? Seq { get; set; }

    /// <summary>The time of its last birth by its own clock: aliases of messages before it are not known.</summary>
    public DateTimeOffset? BornAt { get; set; }

    /// <summary>Whether its births are to be asked for.</summary>
    public bool WantsBirth { get; set; }

    /// <summary>When they were asked for last.</summary>
    public DateTimeOffset? BirthAskedAt { get; set; }
}
