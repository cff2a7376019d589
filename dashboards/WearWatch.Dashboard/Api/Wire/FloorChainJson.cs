using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain in the pack. The id is the position's on its label; the caution is a name in the pack's cautions.</summary>
internal sealed record FloorChainJson
{
    public required int Id { get; init; }

    public required string Chain { get; init; }

    public required string Line { get; init; }

    public required string Position { get; init; }

    public required string ChainType { get; init; }

    public required string Family { get; init; }

    public required double PitchMm { get; init; }

    public int? Pitches { get; init; }

    public required int Strands { get; init; }

    /// <summary>Whether there is a take-up whose position can be read.</summary>
    public required bool HasTakeUp { get; init; }

    /// <summary>Whether it can be closed at an odd number of pitches.</summary>
    public required bool CanBeOdd { get; init; }

    /// <summary>Whether it lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>From when it is out of use, of a chain that lifts or holds a load; null while that is not in sight.</summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>Whether pitches may ever be taken out of it; of a chain that lifts never.</summary>
    public required bool MayBeShortened { get; init; }

    /// <summary>The names of the chains that run together with it, and are shortened together.</summary>
    public required IReadOnlyList<string> Mates { get; init; }

    public required string Caution { get; init; }

    public required string Condition { get; init; }

    public double? ElongationPct { get; init; }

    public required double LimitPct { get; init; }

    public DateTimeOffset? EarlyDate { get; init; }

    /// <summary>What comes to its limit then, where that is not the length.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? LimitedBy { get; init; }

    /// <summary>
    /// When it is to be shortened at the earliest, and by how many pitches; null where that does not come first.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DateTimeOffset? ShortenFrom { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? ShortenPitches { get; init; }

    /// <summary>When it is to be tensioned anew, by its slack.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DateTimeOffset? TensionFrom { get; init; }

    /// <summary>When the shutdown begins in which its swap is planned; null when none is.</summary>
    public DateTimeOffset? PlannedSwap { get; init; }

    /// <summary>What its place or material asks of its oil.</summary>
    public required IReadOnlyList<string> OilCautions { get; init; }

    /// <summary>How its lubrication is recorded; null where none is foreseen.</summary>
    public FloorOilJson? Oil { get; init; }

    public double? LastCounterH { get; init; }

    public FloorReadingJson? Last { get; init; }

    public required FloorSpanJson Proposed { get; init; }

    public FloorExpectedJson? Expected { get; init; }

    public required IReadOnlyList<FloorTaskJson> Tasks { get; init; }

    /// <summary>What is known of its parts and its wheels beside the length.</summary>
    public required IReadOnlyList<FloorPartJson> Parts { get; init; }

    /// <summary>The limits of its links; null for a chain whose table of them is not known.</summary>
    public FloorLinksJson? Links { get; init; }

    /// <summary>What stands against its use; null for a chain that does not lift.</summary>
    public LiftingNowJson? Lifting { get; init; }
}

/// <summary>The newest reading that counts.</summary>
internal sealed record FloorReadingJson
{
    public required DateTimeOffset TakenAt { get; init; }

    public required string Tool { get; init; }

    public required string Unit { get; init; }

    public required string Place { get; init; }

    public required int Pitches { get; init; }

    public required double LengthMm { get; init; }

    public required string LengthAsTold { get; init; }

    public double? ElongationPct { get; init; }
}

/// <summary>A length to measure over, and why so long.</summary>
internal sealed record FloorSpanJson(int Pitches, double LengthMm, string Advice);

/// <summary>From what a phone says what is to be expected: the track's elongation, its wear rate, how sure both are.</summary>
internal sealed record FloorExpectedJson(
    double StartPct, double StartSdPct, [property: JsonPropertyName("rate_pct_per_1000h")]
        double RatePctPer1000h, double LogRateSd, double HoursSinceReading);

/// <summary>Something to do at a chain: measure, oil or look.</summary>
internal sealed record FloorTaskJson(string Task, DateTimeOffset? DueAt, string Why, bool DoneToday);
