using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain in the pack. The id is the position's on its label; the caution is a name in the pack's cautions.</summary>
internal sealed record FloorChainJson(
    int Id, string Chain, string Line, string Position, string ChainType, string Family, double PitchMm, int? Pitches,
    int Strands, string Caution,
    string Condition, double? ElongationPct, double LimitPct, DateTimeOffset? EarlyDate, double? LastCounterH,
    FloorReadingJson? Last, FloorSpanJson Proposed, FloorExpectedJson? Expected, IReadOnlyList<FloorTaskJson> Tasks);

/// <summary>The newest reading that counts.</summary>
internal sealed record FloorReadingJson(
    DateTimeOffset TakenAt, string Tool, string Unit, string Place, int Pitches, double LengthMm, string LengthAsTold,
    double? ElongationPct);

/// <summary>A length to measure over.</summary>
internal sealed record FloorSpanJson(int Pitches, double LengthMm);

/// <summary>From what a phone says what is to be expected: the track's elongation, its wear rate, how sure both are.</summary>
internal sealed record FloorExpectedJson(
    double StartPct, double StartSdPct, [property: JsonPropertyName("rate_pct_per_1000h")]
        double RatePctPer1000h, double LogRateSd, double HoursSinceReading);

/// <summary>Something to do at a chain: measure, oil or look.</summary>
internal sealed record FloorTaskJson(string Task, DateTimeOffset? DueAt, string Why, bool DoneToday);
