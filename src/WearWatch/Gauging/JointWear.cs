namespace WearWatch.Gauging;

/// <summary>What elongation is made of: the wear of pin and bush in every joint. The plates do not stretch.</summary>
public static class JointWear
{
    /// <summary>Elongation in percent: <c>100 (wp + wb)/p</c>.</summary>
    /// <remarks>
    /// From bush to bush inner links stay p and outer links become p + 2 (wp + wb), so a pair of pitches grows by the wear of two
    /// joints and the mean pitch by that of one. Geometry; see docs/gauging.md.
    /// </remarks>
    /// <param name="pinWearMm">Depth of wear of the pin in millimetres, along the pull.</param>
    /// <param name="bushWearMm">Depth of wear of the bush in millimetres, along the pull.</param>
    /// <param name="pitchMm">Nominal pitch in millimetres.</param>
    public static double ElongationPercent(double pinWearMm, double bushWearMm, double pitchMm) =>
        100 * (pinWearMm + bushWearMm) / pitchMm;

    /// <summary>
    /// Wear of pin and bush together in millimetres at an elongation, to compare with the depth of the hard case.
    /// </summary>
    /// <param name="elongationPercent">Elongation in percent.</param>
    /// <param name="pitchMm">Nominal pitch in millimetres.</param>
    public static double DepthMm(double elongationPercent, double pitchMm) => elongationPercent / 100 * pitchMm;
}
