namespace WearWatch.Learning;

/// <summary>One effect on ln rate.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Effect">Change of ln rate for a unit of it.</param>
/// <param name="StandardError">Standard error.</param>
public sealed record LearnedEffect(string Name, double Effect, double StandardError)
{
    /// <summary>
    /// An effect this many standard errors from none is named as a driver: by chance alone it happens once in a hundred.
    /// </summary>
    /// <remarks>
    /// A table of ten effects is read as a whole. At the usual two errors every second table would name one that is none.
    /// </remarks>
    public const double DriverErrors = 2.5758;

    private const double Errors90 = 1.6449;

    /// <summary>What its chains have in common, <c>line</c> or <c>lot</c>; empty for an input of the card.</summary>
    public string Origin { get; init; } = "";

    /// <summary>Of a line or a lot: its name.</summary>
    public string Member { get; init; } = "";

    /// <summary>Of a line or a lot: how many fitted chains it was learned from.</summary>
    public int? Chains { get; init; }

    /// <summary>By what the wear rate is multiplied for a unit of it.</summary>
    public double Factor => Math.Exp(Effect);

    /// <summary>Lower end of the 90 % interval of <see cref="Factor"/>.</summary>
    public double FactorLow => Math.Exp(Effect - Errors90 * StandardError);

    /// <summary>Upper end of the 90 % interval of <see cref="Factor"/>.</summary>
    public double FactorHigh => Math.Exp(Effect + Errors90 * StandardError);

    /// <summary>Whether it is named as something that drives wear.</summary>
    public bool IsDriver => Math.Abs(Effect) > DriverErrors * StandardError;
}
