namespace WearWatch.Gauging;

/// <summary>How much longer a chain is than nominal, with how well that is known.</summary>
/// <param name="Percent">Elongation in percent of the nominal length; may be slightly negative for a new chain.</param>
/// <param name="StandardUncertaintyPercent">
/// Standard uncertainty (k = 1) of the elongation against nominal: tool, reading, temperature and the tolerance of a new chain.
/// </param>
/// <param name="ScatterPercent">
/// Standard deviation from one reading to the next of the same chain: what of the uncertainty does not stay the same all its
/// life. The track weighs readings by it.
/// </param>
public readonly record struct Elongation(double Percent, double StandardUncertaintyPercent, double ScatterPercent)
{
    /// <summary>Expanded uncertainty at coverage factor k = 2, about 95 %.</summary>
    public double ExpandedUncertaintyPercent => 2 * StandardUncertaintyPercent;
}
