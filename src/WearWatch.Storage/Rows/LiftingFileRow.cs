namespace WearWatch.Storage.Rows;

/// <summary>What a scanned paper of a lifting chain is.</summary>
public enum LiftingFileKind
{
    Certificate,
    ProofTest,
    WrittenScheme,
    ExaminationReport,
}

/// <summary>A scanned paper of a lifting chain. Rows are only ever added.</summary>
public sealed class LiftingFileRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    public LiftingFileKind Kind { get; init; }

    /// <summary>The file's name as it was sent, without its folder.</summary>
    public required string Name { get; init; }

    /// <summary><c>application/pdf</c> or <c>image/jpeg</c>, by what the file begins with.</summary>
    public required string ContentType { get; init; }

    public required byte[] Content { get; init; }

    public required string ToldBy { get; init; }

    public DateTimeOffset ReceivedAt { get; init; }
}
