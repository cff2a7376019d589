namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A file that was taken in before.</summary>
internal sealed record PastImportJson(
    string File, DateTimeOffset ReceivedAt, int Taken, int AlreadyKnown, int Waiting, int Refused)
{
    /// <summary>Whose import it was; empty before that was kept.</summary>
    public required string By { get; init; }
}
