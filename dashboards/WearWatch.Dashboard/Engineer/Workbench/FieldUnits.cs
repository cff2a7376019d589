using System.Globalization;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;
using WearWatch.Units;

namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>
/// How a field's text changes between a person's unit and that of the address. Text that cannot be read stays as it is.
/// </summary>
/// <param name="ToScreen">From the address to the screen.</param>
/// <param name="ToAddress">From the screen to the address.</param>
public sealed record FieldUnits(Func<string, string> ToScreen, Func<string, string> ToAddress)
{
    /// <summary>Significant digits that make a value read as it was written.</summary>
    private const string Digits = "G12";

    /// <summary>Millimetres in the address, the person's unit of length on the screen.</summary>
    public static FieldUnits Millimetres(UnitPreference units) => new(
        text => Number(text) is { } mm ? Show.Written(Text(new Length(mm).In(units.Length))) : text,
        text => LengthText.Read(Plain(text), units.Length) is LengthText.Understood read ? Text(read.Length.Millimetres) : text);

    /// <summary>Degrees Celsius in the address.</summary>
    public static FieldUnits Celsius(UnitPreference units) => !units.Fahrenheit ? Same : new(
        text => Number(text) is { } celsius ? Show.Written(Text(Math.Round(new Temperature(celsius).Fahrenheit, 6))) : text,
        text => TypedNumber.Of(text) is { } fahrenheit ? Text(Temperature.FromFahrenheit(fahrenheit).Celsius) : text);

    /// <summary>A quantity that carries its unit in the address: a plain number gets the person's.</summary>
    public static FieldUnits Marked(QuantityKind kind, string mark) => new(
        Show.Written, text => TypedNumber.Of(text) is not null && !kind.HasUnit(text)
            ? $"{Plain(text).Trim()} {mark}" : Plain(text));

    /// <summary>A length that carries its unit in the address.</summary>
    public static FieldUnits MarkedLength(UnitPreference units) => new(
        Show.Written, text => LengthText.Read(Plain(text), units.Length) is LengthText.Understood
            && TypedNumber.Of(text) is not null
            ? $"{Plain(text).Trim()} {units.LengthMark}"
            : Plain(text));

    private static FieldUnits Same { get; } = new(Show.Written, Plain);

    // What can mean two numbers stays as typed: the address and the field then show how it was read.
    private static string Plain(string text) => TypedNumber.WithPoints(text, out _) ?? text;

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && double.IsFinite(value) ? value : null;

    // Adding zero takes the sign off a rounded minus zero.
    private static string Text(double value) => (value + 0.0).ToString(Digits, CultureInfo.InvariantCulture);
}
