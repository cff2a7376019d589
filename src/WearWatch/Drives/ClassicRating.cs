using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>The power that one strand of an ASME B29.1 chain may transmit, by the classic formulas.</summary>
/// <remarks>
/// Classic generation: newer tables allow 20 to 30 % more in the link-plate branch of small chains (No. 25, 19 teeth, 900 rpm:
/// 0.92 against 0.70 hp [34]). The two are never mixed here. Lower of the two branches; life basis 15,000 h, smooth load,
/// recommended lubrication. Galling limits speed besides and is not computed. Source: docs/references.md [33]; the minus in the
/// exponent is lost in that copy and from memory.
/// </remarks>
public static class ClassicRating
{
    /// <summary>What must stand beside every figure of this rating.</summary>
    public static Phrase Generation { get; } = $"classic formulas; newer tables differ and are not mixed in";

    /// <summary>Limit by the fatigue of the link plates in horsepower: <c>K1 N^1.08 n^0.9 p^(3 - 0.07 p)</c>.</summary>
    /// <remarks>K1 = 0.004, for the light No. 41 0.0022; N teeth of the small sprocket, n its rpm, p pitch in inches.</remarks>
    /// <param name="chainNumber">ASME number: 25, 35, 40, 41, 50 ... 240.</param>
    /// <param name="teeth">Teeth of the small sprocket, N.</param>
    /// <param name="rpm">Its speed in turns a minute, n.</param>
    public static double LinkPlateHorsepower(int chainNumber, int teeth, double rpm)
    {
        var p = PitchInches(chainNumber);
        var k1 = chainNumber == 41 ? 0.0022 : 0.004;
        return k1 * Math.Pow(teeth, 1.08) * Math.Pow(rpm, 0.9) * Math.Pow(p, 3 - 0.07 * p);
    }

    /// <summary>Limit by the impact on rollers and bushes in horsepower: <c>1000 K2 N^1.5 p^0.8/n^1.5</c>.</summary>
    /// <remarks>K2 = 29 for No. 25 and 35, 3.4 for No. 41, 17 for No. 40 to 240.</remarks>
    /// <param name="chainNumber">ASME number: 25, 35, 40, 41, 50 ... 240.</param>
    /// <param name="teeth">Teeth of the small sprocket, N.</param>
    /// <param name="rpm">Its speed in turns a minute, n.</param>
    public static double RollerHorsepower(int chainNumber, int teeth, double rpm)
    {
        var k2 = chainNumber switch { 25 or 35 => 29, 41 => 3.4, _ => 17 };
        return 1000 * k2 * Math.Pow(teeth, 1.5) * Math.Pow(PitchInches(chainNumber), 0.8) / Math.Pow(rpm, 1.5);
    }

    /// <summary>The power of so many strands: the lower branch times the strand factor.</summary>
    /// <param name="chainNumber">ASME number: 25, 35, 40, 41, 50 ... 240.</param>
    /// <param name="teeth">Teeth of the small sprocket.</param>
    /// <param name="rpm">Its speed in turns a minute; above zero.</param>
    /// <param name="strands">1 to 6 strands.</param>
    public static Power Of(int chainNumber, int teeth, double rpm, int strands = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rpm);
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, 9);
        var oneStrand = Math.Min(LinkPlateHorsepower(chainNumber, teeth, rpm), RollerHorsepower(chainNumber, teeth, rpm));
        return Power.FromHorsepower(oneStrand * RatingFactors.Strands(strands));
    }

    /// <summary>
    /// Pitch in inches: the number without its last digit is the pitch in eighths. Source: docs/references.md [37].
    /// </summary>
    private static double PitchInches(int chainNumber) => chainNumber is >= 25 and <= 240
        ? chainNumber / 10 / 8.0
        : throw new ArgumentOutOfRangeException(nameof(chainNumber), chainNumber,
            "An ASME chain number lies between 25 and 240.");
}
