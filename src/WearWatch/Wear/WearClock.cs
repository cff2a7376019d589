namespace WearWatch.Wear;

/// <summary>
/// The scale on which a chain wears evenly: elongation as it would be had the wear not sped up or slowed down on its way.
/// </summary>
/// <remarks>
/// With d the elongation past the onset <c>e_c</c> and M the most that the rate rises: <c>G(y) = y</c> up to the onset, above it
/// <c>e_c + (1 - exp(-gamma d)) / gamma</c> while <c>exp(gamma d) &lt; M</c>, and from there on a line with the slope 1/M;
/// <c>J = dG/dy = 1 / min(exp(gamma d), M)</c>, 1 below the onset. Without M the scale ends at <c>e_c + 1/gamma</c>. Where the
/// plant has shown a curve of its own, G is that one.
/// </remarks>
/// <param name="OnsetPercent">e_c in percent; infinite when wear never accelerates.</param>
/// <param name="Acceleration">gamma per percent.</param>
public readonly record struct WearClock(double OnsetPercent, double Acceleration)
{
    /// <summary>
    /// A chain is off its sprockets long before; keeps what the end of the scale would make infinite in bounds.
    /// </summary>
    private const double MostPercent = 15;

    /// <summary>ln M; infinite where the rate goes on rising.</summary>
    public double LogMost { get; init; } = double.PositiveInfinity;

    /// <summary>The plant's own curve, where this is its clock.</summary>
    public WearCurve? Curve { get; init; }

    /// <summary>The clock of a node of the constants.</summary>
    public static WearClock Of(OnsetNode node, WearConstants constants) => At(node.Percent, constants);

    /// <summary>The clock of an onset; null for none.</summary>
    public static WearClock At(double? onsetPercent, WearConstants constants) =>
        new(onsetPercent ?? double.PositiveInfinity, constants.Acceleration)
        {
            LogMost = constants.MostAcceleration is { } most ? Math.Log(most) : double.PositiveInfinity,
        };

    /// <summary>The clock of a plant's own curve.</summary>
    public static WearClock Of(WearCurve curve) => new(double.PositiveInfinity, 1) { Curve = curve };

    /// <summary>G: from elongation to the clock, both in percent.</summary>
    public double FromElongation(double percent)
    {
        if (Curve is not null) return Curve.FromElongation(percent);
        if (percent <= OnsetPercent) return percent;
        var rising = Math.Min(percent - OnsetPercent, LogMost / Acceleration);
        var clock = OnsetPercent + (1 - Math.Exp(-Acceleration * rising)) / Acceleration;
        return percent - OnsetPercent <= rising ? clock : clock + (percent - OnsetPercent - rising) * Math.Exp(-LogMost);
    }

    /// <summary>The inverse of G: from the clock to elongation, both in percent.</summary>
    public double ToElongation(double clock)
    {
        if (Curve is not null) return Math.Min(MostPercent, Curve.ToElongation(clock));
        if (clock <= OnsetPercent) return clock;
        var left = 1 - Acceleration * (clock - OnsetPercent);
        if (left > Math.Exp(-LogMost)) return Math.Min(MostPercent, OnsetPercent - Math.Log(left) / Acceleration);
        if (double.IsInfinity(LogMost)) return MostPercent;
        var steepFrom = OnsetPercent + (1 - Math.Exp(-LogMost)) / Acceleration;
        return Math.Min(MostPercent, OnsetPercent + LogMost / Acceleration + (clock - steepFrom) * Math.Exp(LogMost));
    }

    /// <summary>ln J: logarithm of the clock's rate over the elongation's at an elongation; zero below the onset.</summary>
    public double LogSlope(double percent)
    {
        if (Curve is not null) return Math.Log(Curve.SlopeAt(percent));
        return percent <= OnsetPercent ? 0 : -Math.Min(Acceleration * (percent - OnsetPercent), LogMost);
    }
}
