namespace WearWatch.Wear;

/// <summary>How far a measure has come on the way from new to its limit; a length grows to it, a diameter shrinks.</summary>
/// <param name="Percent">The way that it has come, in percent.</param>
/// <param name="ExpandedPercent">Expanded uncertainty (k = 2) of that, in percent of the way.</param>
public readonly record struct LimitWay(double Percent, double ExpandedPercent)
{
    /// <summary>
    /// From this share of the way on a renewal is planned, as a leaf chain's from 2 of 3 %. Common practice.
    /// </summary>
    public const double PlanFromPercent = 200 / 3.0;

    // A tenth of 18 mm is 1.7999... in a computer, and the limit counts as reached.
    private const double Rounding = 1e-9;

    /// <summary>Whether the limit has been reached.</summary>
    public bool IsReached => Percent >= 100 - Rounding;

    /// <summary>Whether it has come so far that a renewal is planned.</summary>
    public bool IsToBePlanned => Percent >= PlanFromPercent - Rounding;

    /// <summary>Whether the upper end of its own uncertainty reaches the limit.</summary>
    public bool MayBeReached => Percent + ExpandedPercent >= 100 - Rounding;

    /// <summary>The way of a value.</summary>
    /// <param name="value">The value.</param>
    /// <param name="expanded">Its expanded uncertainty, in the same unit.</param>
    /// <param name="fresh">What it is when new.</param>
    /// <param name="limit">Its limit.</param>
    public static LimitWay Of(double value, double expanded, double fresh, double limit) =>
        new(100 * (value - fresh) / (limit - fresh), 100 * expanded / Math.Abs(limit - fresh));
}
