using WearWatch.Drives;

namespace WearWatch.Plant.Bench;

/// <summary>The classic rating of a drive, in kilowatts.</summary>
public sealed record RatingJson
{
    /// <summary>Which formulas it rests on; stands beside every figure of it.</summary>
    public required Phrase Generation { get; init; }

    /// <summary>What the chain may transmit, strands included; null when the formulas do not cover it.</summary>
    public required double? RatedKw { get; init; }

    /// <summary>The drive's power times the service factor.</summary>
    public required double AskedKw { get; init; }

    /// <summary>By how much the power is raised for its unevenness.</summary>
    public required double ServiceFactor { get; init; }

    /// <summary>What the strands carry as a multiple of one; null beyond the table.</summary>
    public required double? StrandFactor { get; init; }

    /// <summary>Whether it carries what is asked; null when not known.</summary>
    public required bool? IsEnough { get; init; }

    /// <summary>For which size it was worked out, or why not.</summary>
    public required Phrase Basis { get; init; }

    /// <summary>The wire form of a rating.</summary>
    public static RatingJson Of(DriveRating rating) => new()
    {
        Generation = ClassicRating.Generation,
        RatedKw = rating.Rated?.Kilowatts,
        AskedKw = rating.Asked.Kilowatts,
        ServiceFactor = rating.ServiceFactor,
        StrandFactor = rating.StrandFactor,
        IsEnough = rating.IsEnough,
        Basis = rating.Basis,
    };
}
