namespace WearWatch.Learning;

/// <summary>How a chain's wear rate would change with its card.</summary>
/// <remarks>
/// Life to the limit goes with the inverse of the rate, so that <see cref="LifeFactor"/> is how much longer the chain would last.
/// It is what the fleet shows of chains that differ so, not a proof that to change the one changes the other: chains that are
/// oiled automatically may be better kept in other ways, too.
/// </remarks>
/// <param name="LogRatio">ln of the new rate over the old.</param>
/// <param name="StandardError">Standard error of it.</param>
/// <param name="Outside">
/// Inputs of the changed card that lie outside what the fleet has shown; with any, the change is a guess.
/// </param>
public sealed record RateChange(double LogRatio, double StandardError, IReadOnlyList<string> Outside)
{
    private const double Errors90 = 1.6449;

    /// <summary>By what the life would be multiplied.</summary>
    public double LifeFactor => Math.Exp(-LogRatio);

    /// <summary>Lower end of the 90 % interval of <see cref="LifeFactor"/>.</summary>
    public double LifeFactorLow => Math.Exp(-LogRatio - Errors90 * StandardError);

    /// <summary>Upper end of the 90 % interval of <see cref="LifeFactor"/>.</summary>
    public double LifeFactorHigh => Math.Exp(-LogRatio + Errors90 * StandardError);
}
