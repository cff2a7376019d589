using System.Globalization;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Measuring;

/// <summary>An hour counter as a person writes it down.</summary>
/// <param name="Hours">What stands in the file.</param>
/// <param name="Slip">The slip that went in.</param>
internal readonly record struct ReadCounter(double Hours, CounterSlip Slip)
{
    private const double SlipProbability = 0.003;
    private const int FewestDigits = 3;

    private static readonly CounterSlip[] Slips =
        [CounterSlip.SwappedDigits, CounterSlip.MissingDigit, CounterSlip.RepeatedDigit, CounterSlip.TenthsAsHours];

    /// <summary>Reads a counter, mostly as it shows; with a slip only where that changes the number.</summary>
    public static ReadCounter Of(double shown, Chance chance)
    {
        if (!chance.Happens(SlipProbability)) return new(shown, CounterSlip.None);
        var slip = chance.OneOf(Slips);
        var digits = DigitsOf(shown);
        return digits.Length < FewestDigits ? new(shown, CounterSlip.None)
            : With(shown, slip, chance.Whole(1, digits.Length - 1), slip == CounterSlip.TenthsAsHours ? chance.Whole(0, 9) : 0);
    }

    /// <summary>A counter with a slip at one of its digits; as it shows where that does not change the number.</summary>
    /// <param name="shown">What the counter shows.</param>
    /// <param name="slip">The slip.</param>
    /// <param name="at">At which digit, from 1; the second of two that change places.</param>
    /// <param name="tenths">The digit behind the point, which is read as one before it.</param>
    public static ReadCounter With(double shown, CounterSlip slip, int at, int tenths)
    {
        var digits = DigitsOf(shown);
        var written = slip switch
        {
            CounterSlip.SwappedDigits => digits[..(at - 1)] + digits[at] + digits[at - 1] + digits[(at + 1)..],
            CounterSlip.MissingDigit => digits.Remove(at, 1),
            CounterSlip.RepeatedDigit => digits[..at] + digits[at] + digits[at..],
            CounterSlip.TenthsAsHours => digits + tenths.ToString(CultureInfo.InvariantCulture),
            _ => digits,
        };
        return written == digits ? new(shown, CounterSlip.None) : new(double.Parse(written, CultureInfo.InvariantCulture), slip);
    }

    private static string DigitsOf(double shown) => Math.Floor(shown).ToString(CultureInfo.InvariantCulture);
}
