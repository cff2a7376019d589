namespace WearWatch.Storage.Rows;

/// <summary>What a measuring study is about.</summary>
public enum MeasuringStudyKind
{
    /// <summary>People and tools: sections measured by several people several times.</summary>
    Crossed,

    /// <summary>Bias and linearity: known lengths measured several times.</summary>
    Known,
}

/// <summary>
/// A measuring study as its figures were told. Rows are only ever added: what is worked out of them is worked out again.
/// </summary>
public sealed class MeasuringStudyRow
{
    public int Id { get; init; }

    public MeasuringStudyKind Kind { get; init; }

    public required string Name { get; init; }

    public required string KeptBy { get; init; }

    public DateTimeOffset KeptAt { get; init; }

    /// <summary>The readings, line by line, as they were typed or pasted.</summary>
    public required string Readings { get; init; }

    /// <summary>The limit in the unit of the readings, where one was told.</summary>
    public double? Limit { get; init; }
}
