namespace WearWatch.Storage.Rows;

/// <summary>A mail from its writing to its end. It waits here until the mail server has it.</summary>
public sealed class MailRow
{
    public long Id { get; init; }

    /// <summary>What it is: two processes that write the same mail write one.</summary>
    public required string Key { get; init; }

    public int PersonId { get; init; }

    public required string Address { get; init; }

    public required string Subject { get; init; }

    public required string PlainText { get; init; }

    public required string Html { get; init; }

    public DateTimeOffset WrittenAt { get; init; }

    /// <summary>When the server took it, or refused it for good; null while it waits.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    /// <summary>Whether the server took it.</summary>
    public bool IsSent { get; set; }

    /// <summary>Before this moment nobody tries it: it failed a short time ago, or somebody is sending it.</summary>
    public DateTimeOffset NextTryAt { get; set; }

    public int Tries { get; set; }

    /// <summary>Why the last try failed; empty for none.</summary>
    public string Fault { get; set; } = "";
}
