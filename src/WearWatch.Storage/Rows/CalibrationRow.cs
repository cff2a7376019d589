namespace WearWatch.Storage.Rows;

/// <summary>
/// Constants of wear that the plant's own worn-out chains have taught. Rows are only ever added; the newest is in use.
/// </summary>
public sealed class CalibrationRow
{
    public int Id { get; init; }

    public DateTimeOffset MadeAt { get; init; }

    /// <summary>Chains that had run out.</summary>
    public int Chains { get; init; }

    /// <summary>By how much ln of the probability of all their readings rose over the constants before.</summary>
    public double LogEvidenceGain { get; init; }

    /// <summary>The constants as JSON.</summary>
    public required string Constants { get; init; }
}
