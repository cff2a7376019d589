using System.Globalization;

namespace WearWatch.Units;

/// <summary>A length. One inch is exactly 25.4 mm, by definition since 1959.</summary>
/// <param name="Millimetres">The length in millimetres.</param>
public readonly record struct Length(double Millimetres) : IComparable<Length>
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    /// <summary>
    /// A length given in inches. By 254 and 10, which unlike 25.4 are exact in binary, so that nothing is rounded twice.
    /// </summary>
    public static Length FromInches(double inches) => new(inches * 254 / 10);

    /// <summary>The length in inches.</summary>
    public double Inches => Millimetres * 10 / 254;

    /// <summary>The number that stands for the length in a unit.</summary>
    public double In(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Millimetres;

    /// <summary>The length that a number in a unit stands for.</summary>
    public static Length Of(double number, LengthUnit unit) => unit == LengthUnit.Inch ? FromInches(number) : new(number);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>The length with its unit as people write it: <c>609.6 mm</c>, <c>24.75 in</c>.</summary>
    /// <param name="unit">In which unit.</param>
    /// <param name="decimals">At most so many digits after the point; by default 2 for millimetres and 4 for inches.</param>
    public string ToText(LengthUnit unit, int? decimals = null)
    {
        var digits = new string('#', decimals ?? (unit == LengthUnit.Inch ? 4 : 2));
        return In(unit).ToString("0." + digits, CultureInfo.InvariantCulture) + (unit == LengthUnit.Inch ? " in" : " mm");
    }

    /// <summary>The length in millimetres with its unit.</summary>
    public override string ToString() => ToText(LengthUnit.Millimetre);

    /// <summary>Whether the left is shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Millimetres < right.Millimetres;

    /// <summary>Whether the left is longer.</summary>
    public static bool operator >(Length left, Length right) => left.Millimetres > right.Millimetres;

    /// <summary>Whether the left is not longer.</summary>
    public static bool operator <=(Length left, Length right) => left.Millimetres <= right.Millimetres;

    /// <summary>Whether the left is not shorter.</summary>
    public static bool operator >=(Length left, Length right) => left.Millimetres >= right.Millimetres;
}
