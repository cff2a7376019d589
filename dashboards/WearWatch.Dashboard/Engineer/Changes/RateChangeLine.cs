namespace WearWatch.Dashboard.Engineer.Changes;

/// <summary>One alarm that a chain began to wear faster.</summary>
public sealed record RateChangeLine
{
    /// <summary>Its notice.</summary>
    public required long NoticeId { get; init; }

    /// <summary>The chain.</summary>
    public required string Chain { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>When it was raised.</summary>
    public required DateTimeOffset RaisedAt { get; init; }

    /// <summary>When it ended; null while it is open.</summary>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>Its size and probability, as it was told.</summary>
    public required Phrase Why { get; init; }

    /// <summary>What a person made of it; null while nobody judged.</summary>
    public required bool? JudgedReal { get; init; }

    /// <summary>Who.</summary>
    public required string JudgedBy { get; init; }

    /// <summary>What else happened at the chain about then.</summary>
    public required IReadOnlyList<Phrase> Nearby { get; init; }
}
