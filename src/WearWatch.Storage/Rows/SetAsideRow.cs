using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>What became of a message that was set aside.</summary>
public enum Settlement
{
    /// <summary>It waits for a person.</summary>
    Waiting,

    /// <summary>A person let it in after its cause was gone.</summary>
    Released,

    /// <summary>A person threw it away.</summary>
    Discarded,
}

/// <summary>
/// A message that could not be understood or used, kept as it came with the reason, so that nothing is lost and nothing is held
/// up.
/// </summary>
public sealed class SetAsideRow
{
    public long Id { get; init; }

    /// <summary>A hash of topic and payload: the same message set aside again only counts.</summary>
    public required string Fingerprint { get; init; }

    public required string Topic { get; init; }

    public required byte[] Payload { get; init; }

    /// <summary>Why, said in the language of whoever reads it.</summary>
    public required Phrase Reason { get; set; }

    public int Times { get; set; } = 1;

    public DateTimeOffset FirstAt { get; init; }

    public DateTimeOffset LastAt { get; set; }

    public Settlement Settlement { get; set; }

    public DateTimeOffset? SettledAt { get; set; }

    public string SettledBy { get; set; } = "";
}
