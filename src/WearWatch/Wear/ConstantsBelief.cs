namespace WearWatch.Wear;

/// <summary>
/// What is believed of the constants of wear before a plant has shown anything, and the ways in which they may differ.
/// </summary>
/// <remarks>
/// The logarithm of each constant is normal about that of its default. The deviations are assumptions: most plants within a
/// factor of two to five of the default, any plant within what the evidence of some tens of chains outweighs.
/// </remarks>
internal static class ConstantsBelief
{
    /// <summary>The ways to go, each a constant with how far it may lie from its default.</summary>
    public static readonly ConstantsAxis[] Axes =
    [
        new(1.5, c => c.RateDrift, (c, v) => c with { RateDrift = v }),
        new(1.5, c => c.UnevenWear, (c, v) => c with { UnevenWear = v }),
        new(0.5, c => c.ScatterFactor, (c, v) => c with { ScatterFactor = v }),
        new(1.2, c => c.JumpsPer1000Hours, (c, v) => c with { JumpsPer1000Hours = v }),
        new(0.8, c => c.Prior.VarianceFactor, (c, v) => c with { Prior = c.Prior with { VarianceFactor = v } }),
        new(0.3, c => Math.Exp(c.Prior.LogRate), (c, v) => c with { Prior = c.Prior with { LogRate = Math.Log(v) } }),
        new(0.1, c => Math.Exp(c.Prior.StartPercent), (c, v) => c with { Prior = c.Prior with { StartPercent = Math.Log(v) } })
        {
            Pace = 0.12,
        },
        new(0.7, c => c.RunInPercent, (c, v) => c with { RunInPercent = v, RunInDeviationPercent = 0.4 * v }),
        new(1.2, c => c.RunInHours, (c, v) => c with { RunInHours = v }),
        new(0.7, c => c.Acceleration, (c, v) => c with { Acceleration = v }),
        new(0.7, c => c.PlaceScatter, (c, v) => c with { PlaceScatter = v }),
        new(0.4, c => c.JumpUp, (c, v) => c with
        {
            JumpUp = v,
            JumpDown = v / WearConstants.Default.JumpUp * WearConstants.Default.JumpDown,
            FutureJump = v / WearConstants.Default.JumpUp * WearConstants.Default.FutureJump,
        })
        {
            Pace = 0.4,
        },
    ];

    /// <summary>
    /// Where the search begins: rates that wander and wear that is uneven, each little or much, pass for each other.
    /// </summary>
    public static readonly (double Drift, double Uneven)[] Noises =
    [
        (WearConstants.Default.RateDrift, WearConstants.Default.UnevenWear),
        .. from drift in (double[])[0.0005, 0.004, 0.03, 0.15]
           from uneven in (double[])[0.001, 0.02, 0.1, 0.5]
           select (drift, uneven),
    ];

    /// <summary>
    /// Where acceleration may begin, with how many chains the belief in it is worth: the defaults, spread evenly.
    /// </summary>
    public static readonly (double? Percent, double Chains)[] Onsets =
    [
        (1.25, 0.1), (1.5, 0.2), (1.75, 0.3), (2.0, 0.5), (2.25, 0.8), (2.5, 0.8), (2.75, 0.8), (3.0, 0.8), (3.25, 0.8),
        (null, 0.9),
    ];

    /// <summary>How many chains the belief in a curve of the plant's own is worth.</summary>
    public const double CurveChains = 0.5;

    /// <summary>How far the rate may rise, where it does not go on rising.</summary>
    public static readonly double?[] Most = [null, 1.5, 2, 3, 4.5];

    private const double LogOddsOfMost = -1.5;

    /// <summary>ln of the density of some constants, as far as it differs among them.</summary>
    public static double LogDensity(WearConstants constants) =>
        Axes.Sum(a => a.LogDensity(constants)) + (constants.MostAcceleration is null ? 0 : LogOddsOfMost);
}
