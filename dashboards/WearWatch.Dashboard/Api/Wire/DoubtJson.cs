namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What is to be said of an entry before it is told: whether it is doubted, and what may have slipped.</summary>
internal sealed record DoubtJson(
    bool IsDoubted, double? ElongationPct, double? ExpectedPct, string Question, IReadOnlyList<SlipJson> Slips);

/// <summary>A slip that would explain an entry, with its odds and what the entry would be then.</summary>
internal sealed record SlipJson
{
    public required string Kind { get; init; }

    public required double Probability { get; init; }

    public required double ElongationPct { get; init; }

    public required string Words { get; init; }

    public required int Pitches { get; init; }

    public required double LengthMm { get; init; }

    public required string Chain { get; init; }
}

/// <summary>A person's word on a reading that was told: who says it and why.</summary>
internal sealed record WordJson(string? By, string? Why);
