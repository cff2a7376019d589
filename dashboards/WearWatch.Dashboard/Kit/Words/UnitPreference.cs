using System.Globalization;
using WearWatch.Units;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>The units in which a person reads and writes. What is kept and sent is SI, whatever stands here.</summary>
/// <param name="Length">Millimetres or inches.</param>
/// <param name="Horsepower">Whether powers are in horsepower, not in kilowatts.</param>
/// <param name="FeetPerMinute">Whether speeds are in feet a minute, not in metres a second.</param>
/// <param name="Fahrenheit">Whether temperatures are in degrees Fahrenheit, not Celsius.</param>
public sealed record UnitPreference(
    LengthUnit Length = LengthUnit.Millimetre, bool Horsepower = false, bool FeetPerMinute = false, bool Fahrenheit = false)
{
    /// <summary>Name of the cookie that remembers it.</summary>
    public const string Cookie = "wearwatch-units";

    /// <summary>What stands for nothing known.</summary>
    private const string Nothing = Show.Nothing;

    /// <summary>SI units.</summary>
    public static UnitPreference Si { get; } = new();

    /// <summary>Reads a cookie; SI for what it does not name.</summary>
    public static UnitPreference FromCookie(string? value)
    {
        var marks = (value ?? "").Split('.');
        return new(marks.Contains("in") ? LengthUnit.Inch : LengthUnit.Millimetre, marks.Contains("hp"), marks.Contains("ftmin"),
            marks.Contains("f"));
    }

    /// <summary>The value of the cookie.</summary>
    public string ToCookie() =>
        $"{LengthMark}.{(Horsepower ? "hp" : "kw")}.{(FeetPerMinute ? "ftmin" : "ms")}.{(Fahrenheit ? "f" : "c")}";

    public string LengthMark => Length == LengthUnit.Inch ? "in" : "mm";

    public string PowerMark => Horsepower ? "hp" : "kW";

    public string SpeedMark => FeetPerMinute ? "ft/min" : "m/s";

    public string TemperatureMark => Fahrenheit ? "°F" : "°C";

    /// <summary>A length: two decimals in millimetres, four in inches.</summary>
    public string OfLength(double? millimetres) => millimetres is { } mm
        ? new Length(mm).In(Length)
        .ToString(Length == LengthUnit.Inch ? "#,0.####" : "#,0.##", CultureInfo.CurrentCulture) + " " + LengthMark
        : Nothing;

    /// <summary>A length to be found on a rule: whole millimetres, or the nearest thirty-second of an inch.</summary>
    public string OnRule(double? millimetres) => millimetres is { } mm and >= 0
        ? Length == LengthUnit.Inch
        ? InchFraction.Nearest(new Length(mm), graduation: 32).ToString()
        : Text(mm, "#,0") + " " + LengthMark
        : Nothing;

    public string OfArea(double? squareMillimetres) => squareMillimetres is { } area
        ? Length == LengthUnit.Inch ? Text(area / (25.4 * 25.4), "0.###") + " in²" : Text(area, "#,0.#") + " mm²"
        : Nothing;

    /// <summary>A force: pounds-force for those who read inches.</summary>
    public string OfForce(double? newtons) => newtons switch
    {
        null => Nothing,
        { } n when Length == LengthUnit.Inch => Text(new Force(n).Pounds, "#,0") + " lbf",
        { } n when Math.Abs(n) >= 1000 => Text(n / 1000, "#,0.##") + " kN",
        { } n => Text(n, "0.#") + " N",
    };

    public string OfPressure(double? newtonsPerMm2) => newtonsPerMm2 is { } pressure
        ? Length == LengthUnit.Inch
        ? Text(pressure * 25.4 * 25.4 / Force.NewtonsPerPound, "#,0") + " psi"
        : Text(pressure, "0.0") + " N/mm²"
        : Nothing;

    public string OfPower(double? watts) => watts is { } w
        ? (Horsepower ? Text(new Power(w).Horsepower, "#,0.##") : Text(w / 1000, "#,0.##")) + " " + PowerMark
        : Nothing;

    public string OfSpeed(double? metresPerSecond) => metresPerSecond is { } v
        ? (FeetPerMinute ? Text(new Speed(v).FeetPerMinute, "#,0.##") : Text(v, v < 0.1 ? "0.0000" : "0.###")) + " " + SpeedMark
        : Nothing;

    /// <summary>A way in metres, or in feet for those who read inches.</summary>
    public string OfWay(double? metres) => metres is { } m
        ? Length == LengthUnit.Inch ? Text(m / 0.3048, "#,0.##") + " ft" : Text(m, "#,0.##") + " m"
        : Nothing;

    public string OfTemperature(double? celsius) =>
        celsius is { } c ? Text(Fahrenheit ? new Temperature(c).Fahrenheit : c, "0.#") + " " + TemperatureMark : Nothing;

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.CurrentCulture);
}
