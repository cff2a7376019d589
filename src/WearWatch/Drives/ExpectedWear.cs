using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Drives;

/// <summary>The wear rate that a drive's figures let expect, by Archard's law: a prior, wide and said to be so.</summary>
/// <remarks>
/// Depth of wear is pressure times slip: rate in percent an hour = <c>100 k pr s/p</c>, with k wear coefficient, pr bearing
/// pressure, s loaded slip an hour, p pitch. Sources: docs/references.md [18] for the law, [44] for the life basis that k is
/// set by: a drive at its rated pull with 19 teeth and 120 pitches, well lubricated, wears by 3 % in 15,000 h.
/// </remarks>
public static class ExpectedWear
{
    /// <summary>Hours of the common life basis.</summary>
    public const double LifeBasisHours = 15_000;

    /// <summary>Wear coefficient in mm3/(N m).</summary>
    /// <remarks>
    /// From 16B-1, 19 and 57 teeth, 120 pitches, 300 rpm at 5 kN, about its classic rating: 23.7 N/mm2 over 5.20 m/h must give
    /// 3 % of 25.4 mm in 15,000 h. The area behind it is from memory.
    /// </remarks>
    public const double CoefficientMm3PerNewtonMetre = 4.12e-7;

    /// <summary>
    /// Standard deviation of ln(rate) with recommended lubrication: two drives of like figures differ by a factor of two or so.
    /// </summary>
    private const double SpreadWellOiled = 0.8;

    /// <summary>Otherwise nobody has published by how much worse it is, so only the width grows. Common practice.</summary>
    private const double SpreadElse = 1.0;

    /// <summary>
    /// Whether the law tells anything of a drive: it is set at the rated pull, and holds near it, from a quarter to one and a
    /// half of it (common practice). A conveyor or a drive that idles wears by dirt and corrosion, not by this law.
    /// </summary>
    public static bool Covers(RelativeLoad load) => load.Share is >= 0.25 and <= 1.5;

    /// <summary>The expected rate in percent per 1,000 running hours; null when pin or area are not known.</summary>
    /// <param name="figures">The drive's figures.</param>
    /// <param name="pitchMm">Its pitch in millimetres.</param>
    public static double? PercentPer1000Hours(DriveFigures figures, double pitchMm) =>
        1000 * 100 * CoefficientMm3PerNewtonMetre
        * figures.BearingPressureNewtonsPerMm2 * figures.LoadedSlipMetresPerHour / pitchMm;

    /// <summary>The expected rate as a prior for the track; null when it cannot be worked out.</summary>
    /// <param name="figures">The drive's figures.</param>
    /// <param name="pitchMm">Its pitch in millimetres.</param>
    /// <param name="lubrication">How the chain is oiled; null when not known.</param>
    public static WearPrior? Prior(DriveFigures figures, double pitchMm, LubricationState? lubrication)
    {
        if (PercentPer1000Hours(figures, pitchMm) is not (> 0 and var rate)) return null;
        var spread = lubrication is LubricationState.Auto or LubricationState.Manual ? SpreadWellOiled : SpreadElse;
        return WearPrior.Broad with
        {
            MeanLogRate = Math.Log(rate),
            VarianceLogRate = spread * spread,
            Source = $"Archard's law, set to 3 % in 15,000 h at rated load (wide)",
        };
    }
}
