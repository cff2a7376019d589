namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What is to be said of an entry before it is told: whether it is doubted, and what may have slipped.</summary>
internal sealed record DoubtJson(
    bool IsDoubted, double? ElongationPct, double? ExpectedPct, string Question, IReadOnlyList<SlipJson> Slips);

/// <summary>A slip that would explain an entry, with its odds and what the entry would be then.</summary>
internal sealed record SlipJson(
    string Kind, double Probability, double ElongationPct, string Words, int Pitches, double LengthMm, string Chain);

/// <summary>A person's word on a reading that was told: who says it and why.</summary>
internal sealed record WordJson(string? By, string? Why);
