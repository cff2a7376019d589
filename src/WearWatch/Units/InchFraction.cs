using System.Globalization;
using System.Numerics;

namespace WearWatch.Units;

/// <summary>Inches as an inch rule shows them: whole inches and a fraction in lowest terms.</summary>
/// <param name="Whole">Whole inches.</param>
/// <param name="Numerator">Upper number of the fraction; zero for none.</param>
/// <param name="Denominator">Lower number: 1, 2, 4, ... 64.</param>
public readonly record struct InchFraction(int Whole, int Numerator, int Denominator)
{
    /// <summary>The nearest mark of a rule to a length; half-way goes up.</summary>
    /// <param name="length">The length; not negative.</param>
    /// <param name="graduation">Parts in which the rule divides an inch: a power of two up to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or the graduation is on no rule.</exception>
    public static InchFraction Nearest(Length length, int graduation = 64)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(length.Millimetres);
        if (graduation is < 1 or > 64 || !BitOperations.IsPow2(graduation))
            throw new ArgumentOutOfRangeException(nameof(graduation), graduation,
                "An inch rule has 1, 2, 4, 8, 16, 32 or 64 parts.");
        var parts = (long)Math.Round(length.Inches * graduation, MidpointRounding.AwayFromZero);
        var (whole, rest) = Math.DivRem(parts, graduation);
        if (rest == 0) return new InchFraction((int)whole, 0, 1);
        var shared = 1 << BitOperations.TrailingZeroCount(rest);
        return new InchFraction((int)whole, (int)rest / shared, graduation / shared);
    }

    /// <summary>The length.</summary>
    public Length Length => Length.FromInches(Whole + (double)Numerator / Denominator);

    /// <summary>As it is written: <c>48 3/16"</c>.</summary>
    public override string ToString() => Numerator == 0
        ? string.Create(CultureInfo.InvariantCulture, $"{Whole}\"")
        : Whole == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}\"")
            : string.Create(CultureInfo.InvariantCulture, $"{Whole} {Numerator}/{Denominator}\"");
}
