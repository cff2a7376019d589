using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Lubrication;
using WearWatch.Wear;

namespace WearWatch.Plant.Bench;

/// <summary>What a drive does to its chain, and what the chain then needs.</summary>
public sealed record DriveCalculation
{
    /// <summary>Nineteen of twenty: 1.645 standard deviations either way leave 5 % beyond.</summary>
    private const double NinetyPercentEachSide = 1.6448536269514722;

    /// <summary>The chain type; null when only its pitch was told.</summary>
    public required ChainType? Type { get; init; }

    /// <summary>The drive as it was told.</summary>
    public required ChainDrive Drive { get; init; }

    /// <summary>What follows from its geometry, speed and power.</summary>
    public required DriveFigures Figures { get; init; }

    /// <summary>
    /// The length that the centre distance asked for, before it was rounded up to an even number; null when pitches were told.
    /// </summary>
    public required double? ExactPitches { get; init; }

    /// <summary>What the chain may transmit.</summary>
    public required DriveRating Rating { get; init; }

    /// <summary>How hard the chain is worked, or why that is not known.</summary>
    public required RelativeLoad RelativeLoad { get; init; }

    /// <summary>Chains that carry the power by the classic rating.</summary>
    public required IReadOnlyList<SelectedChain> Alternatives { get; init; }

    /// <summary>How it has to be oiled at that speed; null for a chain that lifts or holds a load.</summary>
    public required OilFeed? OilFeed { get; init; }

    /// <summary>Whether it is oiled so; null when not told.</summary>
    public required bool? OilIsEnough { get; init; }

    /// <summary>Which oil, where the surroundings' temperature was told and stands in the table.</summary>
    public required OilGrade? OilGrade { get; init; }

    /// <summary>The surroundings' temperature as told.</summary>
    public required double? AmbientC { get; init; }

    /// <summary>
    /// What wear rate to expect, with its width; null when pin, joint area or rating is not known, or the law does not hold.
    /// </summary>
    public required WearPrior? Prior { get; init; }

    /// <summary>At which elongation it is to be replaced.</summary>
    public required LimitVerdict Limits { get; init; }

    /// <summary>Whether it lifts or holds a load, by its kind or as told.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<Phrase> Cautions { get; init; }

    /// <summary>Whether an offset link would be needed.</summary>
    public bool HasOddPitches => int.IsOddInteger(Drive.Pitches);

    /// <summary>
    /// The expected rate in percent per 1,000 h: one of twenty such drives wears slower, the middle, one of twenty faster.
    /// </summary>
    public (double Slow, double Middle, double Fast)? ExpectedRate => Prior is { } prior
        ? (Rate(prior, -NinetyPercentEachSide), Rate(prior, 0), Rate(prior, NinetyPercentEachSide))
        : null;

    /// <summary>Running hours from new to the limit at the rates of <see cref="ExpectedRate"/>: the fast one first.</summary>
    public (double Early, double Middle, double Late)? ExpectedHours => ExpectedRate is { } rate
        ? (Hours(rate.Fast), Hours(rate.Middle), Hours(rate.Slow))
        : null;

    /// <summary>Values that the figures rest on and that were only recalled, in words; empty when all were read.</summary>
    public IReadOnlyList<string> FromMemory => [.. new (string Name, Sourced? Value)[]
        {
            ("pitch", Type?.PitchMm), ("pin diameter", Type?.PinMm), ("bearing area", Type?.JointAreaMm2),
            ("tensile strength", Type?.TensileKilonewtons),
        }
        .Where(v => v.Value is { IsVerified: false }).Select(v => v.Name)];

    private double Hours(double percentPer1000Hours) => 1000 * Limits.Governing.Percent / percentPer1000Hours;

    private static double Rate(WearPrior prior, double deviations) =>
        Math.Exp(prior.MeanLogRate + deviations * Math.Sqrt(prior.VarianceLogRate));
}
