using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>One file that was taken in, with what became of its rows.</summary>
public sealed class ImportRow
{
    public int Id { get; init; }

    public required string FileName { get; init; }

    public required string Sha256 { get; init; }

    /// <summary>Whose import it was: a person, a key, the inbox, the command line; empty before that was kept.</summary>
    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    public int Taken { get; init; }

    public int AlreadyKnown { get; init; }

    public int Waiting { get; init; }

    public int Refused { get; init; }

    /// <summary>The refusals and warnings, a line each.</summary>
    public required Phrase Report { get; init; }

    /// <summary>
    /// The refused rows with why, to be written as a file again; empty for none. An old row has the file itself.
    /// </summary>
    public string RefusedRows { get; init; } = "";
}
