namespace WearWatch.Storage.Rows;

/// <summary>Tries at the door that count against one account, address or device since its last good one.</summary>
public sealed class SignInTryRow
{
    /// <summary>A hash of what is counted, so that what was typed as a name is not kept.</summary>
    public required string Subject { get; init; }

    public int Tries { get; set; }

    /// <summary>Before that no further try is looked at.</summary>
    public DateTimeOffset FreeAt { get; set; }

    public DateTimeOffset LastAt { get; set; }
}
