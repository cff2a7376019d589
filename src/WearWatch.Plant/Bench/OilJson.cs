using System.Text.Json.Serialization;
using WearWatch.Lubrication;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>How the chain of a drive has to be oiled.</summary>
public sealed record OilJson
{
    /// <summary>
    /// The least way of bringing the oil there that will do, as a word of the files; null for a chain that lifts or holds a load.
    /// </summary>
    public required string? Feed { get; init; }

    /// <summary>How a chain that lifts or holds a load is oiled, in words; null for any other.</summary>
    public required Phrase? Lifting { get; init; }

    /// <summary>Up to this speed of the chain it may be oiled by hand, in metres a second; null as before.</summary>
    [JsonPropertyName("by_hand_up_to_m_s")]
    public required double? ByHandUpToMPerS { get; init; }

    /// <summary>Up to this speed a bath will do, in metres a second; null as before.</summary>
    [JsonPropertyName("bath_up_to_m_s")]
    public required double? BathUpToMPerS { get; init; }

    /// <summary>Where it is from.</summary>
    public required string Source { get; init; }

    /// <summary>Whether it was read there; false for recalled.</summary>
    public required bool Verified { get; init; }

    /// <summary>Whether the way in which it is oiled will do; null when that was not told.</summary>
    public required bool? FittedIsEnough { get; init; }

    /// <summary>SAE grade of an engine oil; null where the surroundings' temperature was not told or is in no table.</summary>
    public required string? Sae { get; init; }

    /// <summary>ISO viscosity grade; null as before.</summary>
    public required string? IsoVg { get; init; }

    /// <summary>Where the grade is from; null as before.</summary>
    public required string? GradeSource { get; init; }

    /// <summary>The wire form of what a calculation says of oil.</summary>
    public static OilJson Of(DriveCalculation worked) => new()
    {
        Feed = worked.OilFeed is { } feed ? FileWords.Of(feed.Kind) : null,
        Lifting = worked.OilFeed is null ? OilAmount.OfLifting.Text : null,
        ByHandUpToMPerS = worked.OilFeed?.ManualUpTo.MetresPerSecond,
        BathUpToMPerS = worked.OilFeed?.BathUpTo.MetresPerSecond,
        Source = worked.OilFeed?.Source ?? OilAmount.OfLifting.Source,
        Verified = worked.OilFeed?.IsVerified ?? OilAmount.OfLifting.IsVerified,
        FittedIsEnough = worked.OilIsEnough,
        Sae = worked.OilGrade?.Sae,
        IsoVg = worked.OilGrade?.IsoVg,
        GradeSource = worked.OilGrade?.Source,
    };
}
