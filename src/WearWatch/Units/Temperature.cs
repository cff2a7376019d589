namespace WearWatch.Units;

/// <summary>A temperature.</summary>
/// <param name="Celsius">The temperature in degrees Celsius.</param>
public readonly record struct Temperature(double Celsius)
{
    /// <summary>A temperature given in degrees Fahrenheit.</summary>
    public static Temperature FromFahrenheit(double fahrenheit) => new((fahrenheit - 32) / 1.8);

    /// <summary>The temperature in degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * 1.8 + 32;
}
