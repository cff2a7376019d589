namespace WearWatch.Wear;

/// <summary>
/// The scale on which an accelerating chain wears evenly: elongation as it would be had the wear not sped up at the onset.
/// </summary>
/// <remarks>
/// <c>G(y) = y</c> up to the onset <c>e_c</c>, above it <c>e_c + (1 - exp(-gamma (y - e_c))) / gamma</c>;
/// <c>J = dG/dy = exp(-gamma (y - e_c))</c> there, 1 below. The scale ends at <c>e_c + 1/gamma</c>.
/// </remarks>
/// <param name="OnsetPercent">e_c in percent; infinite when wear never accelerates.</param>
/// <param name="Acceleration">gamma per percent.</param>
public readonly record struct WearClock(double OnsetPercent, double Acceleration)
{
    /// <summary>
    /// A chain is off its sprockets long before; keeps what the end of the scale would make infinite in bounds.
    /// </summary>
    private const double MostPercent = 15;

    /// <summary>The clock of a node of the constants.</summary>
    public static WearClock Of(OnsetNode node, WearConstants constants) =>
        new(node.Percent ?? double.PositiveInfinity, constants.Acceleration);

    /// <summary>G: from elongation to the clock, both in percent.</summary>
    public double FromElongation(double percent) => percent <= OnsetPercent
        ? percent
        : OnsetPercent + (1 - Math.Exp(-Acceleration * (percent - OnsetPercent))) / Acceleration;

    /// <summary>The inverse of G: from the clock to elongation, both in percent.</summary>
    public double ToElongation(double clock)
    {
        if (clock <= OnsetPercent) return clock;
        var left = 1 - Acceleration * (clock - OnsetPercent);
        return left <= 0 ? MostPercent : Math.Min(MostPercent, OnsetPercent - Math.Log(left) / Acceleration);
    }

    /// <summary>ln J: logarithm of the clock's rate over the elongation's at an elongation; zero below the onset.</summary>
    public double LogSlope(double percent) => percent <= OnsetPercent ? 0 : -Acceleration * (percent - OnsetPercent);
}
