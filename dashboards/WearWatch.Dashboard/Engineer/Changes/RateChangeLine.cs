namespace WearWatch.Dashboard.Engineer.Changes;

/// <summary>One alarm that a chain began to wear faster.</summary>
/// <param name="NoticeId">Its notice.</param>
/// <param name="Chain">The chain.</param>
/// <param name="Line">Its line.</param>
/// <param name="RaisedAt">When it was raised.</param>
/// <param name="EndedAt">When it ended; null while it is open.</param>
/// <param name="Why">Its size and probability, as it was told.</param>
/// <param name="JudgedReal">What a person made of it; null while nobody judged.</param>
/// <param name="JudgedBy">Who.</param>
/// <param name="Nearby">What else happened at the chain about then.</param>
public sealed record RateChangeLine(
    long NoticeId, string Chain, string Line, DateTimeOffset RaisedAt, DateTimeOffset? EndedAt, string Why, bool? JudgedReal,
    string JudgedBy,
    IReadOnlyList<string> Nearby);
