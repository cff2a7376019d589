using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain as the register has it.</summary>
internal sealed record ChainCardJson(
    string Chain, string Line, string Position, string ChainType, string Family, double PitchMm, int? Pitches,
    IReadOnlyList<int> SprocketTeeth,
    DateTimeOffset? FittedAt, double? FittedCounterH, double? LimitPct, double? LoadRel, [property: JsonPropertyName("speed_m_s")]
        double? SpeedMPerS, string? Lubrication, string? Dust, string Lot);
