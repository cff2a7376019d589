using System.Globalization;

namespace WearWatch.SensorSim.Measuring;

/// <summary>A length as a person writes it down.</summary>
/// <param name="Text">What stands in the file: <c>612.5</c>, or inches as in <c>48 3/16</c>.</param>
/// <param name="Unit"><c>mm</c> or <c>in</c>.</param>
internal readonly record struct EnteredLength(string Text, string Unit)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Writes a length to the division of the tool: half a millimetre or a sixteenth of an inch on a tape.</summary>
    public static EnteredLength Of(double lengthMm, Tool tool, bool inInches) => (tool, inInches) switch
    {
        (Tool.Tape, false) => new(Number(Math.Round(2 * lengthMm) / 2, 1), "mm"),
        (Tool.Tape, true) => new(Sixteenths((int)Math.Round(16 * lengthMm / MillimetresPerInch)), "in"),
        (_, false) => new(Number(lengthMm, 2), "mm"),
        (_, true) => new(Number(lengthMm / MillimetresPerInch, 3), "in"),
    };

    /// <summary>The same with a slip of the pen in it, and the slip; another or none where there is no room for it.</summary>
    public (EnteredLength Told, Slip Slip) With(Slip slip)
    {
        if (slip is not (Slip.DecimalSlip or Slip.SwappedDigits)) return (this, slip);
        if (slip == Slip.DecimalSlip && WithSlippedPoint() is var slipped && slipped != this) return (slipped, slip);
        var swapped = WithSwappedDigits();
        return (swapped, swapped == this ? Slip.None : Slip.SwappedDigits);
    }

    /// <summary>The same with the decimal point one digit to the left; itself where there is none, or no digit to pass.</summary>
    public EnteredLength WithSlippedPoint()
    {
        var point = Text.IndexOf('.', StringComparison.Ordinal);
        return point > 1
            ? this with { Text = Text.Remove(point, 1).Insert(point - 1, ".") }
            : this;
    }

    /// <summary>The same with the last two unlike neighbours among its whole digits exchanged; itself if all are alike.</summary>
    public EnteredLength WithSwappedDigits()
    {
        var digits = Text.ToCharArray();
        var end = 0;
        while (end < digits.Length && char.IsAsciiDigit(digits[end])) end++;
        for (var i = end - 1; i > 0; i--)
        {
            if (digits[i] == digits[i - 1]) continue;
            (digits[i], digits[i - 1]) = (digits[i - 1], digits[i]);
            break;
        }

        return this with { Text = new string(digits) };
    }

    private static string Sixteenths(int sixteenths)
    {
        var (whole, rest) = Math.DivRem(sixteenths, 16);
        if (rest == 0) return whole.ToString(CultureInfo.InvariantCulture);
        var below = 16;
        for (; rest % 2 == 0; rest /= 2) below /= 2;
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{rest}/{below}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}");
    }

    private static string Number(double value, int decimals) =>
        Math.Round(value, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
