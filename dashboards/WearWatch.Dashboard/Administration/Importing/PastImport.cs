namespace WearWatch.Dashboard.Administration.Importing;

/// <summary>A file that was taken in, without its refused rows, which may be many.</summary>
public sealed record PastImport
{
    public required int Id { get; init; }

    public required string FileName { get; init; }

    /// <summary>Whose import it was.</summary>
    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    public required int Taken { get; init; }

    public required int AlreadyKnown { get; init; }

    public required int Waiting { get; init; }

    public required int Refused { get; init; }

    /// <summary>Whether its refused rows can be downloaded.</summary>
    public required bool HasRefusedRows { get; init; }

    /// <summary>The refusals and warnings, a line each.</summary>
    public required Phrase Report { get; init; }
}
