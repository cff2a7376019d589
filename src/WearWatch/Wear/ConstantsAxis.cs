namespace WearWatch.Wear;

/// <summary>One constant of wear as a direction to search in.</summary>
/// <param name="LogDeviation">Standard deviation of its logarithm about that of its default.</param>
/// <param name="Of">Its value; above zero.</param>
/// <param name="With">The constants with another value of it.</param>
internal sealed record ConstantsAxis(
    double LogDeviation, Func<WearConstants, double> Of, Func<WearConstants, double, WearConstants> With)
{
    /// <summary>How far a stride of one goes, in its logarithm.</summary>
    public double Pace { get; init; } = 1;

    /// <summary>ln of the density of its value.</summary>
    public double LogDensity(WearConstants constants)
    {
        var off = (Math.Log(Of(constants)) - Math.Log(Of(WearConstants.Default))) / LogDeviation;
        return -off * off / 2;
    }

    /// <summary>The constants a stride farther.</summary>
    public WearConstants Moved(WearConstants constants, double stride) =>
        With(constants, Of(constants) * Math.Exp(Pace * stride));
}
