namespace WearWatch.Units;

/// <summary>A power.</summary>
/// <param name="Watts">The power in watts.</param>
public readonly record struct Power(double Watts)
{
    /// <summary>Watts in a mechanical horsepower: 550 ft lbf/s, rounded to the figure that the trade prints.</summary>
    public const double WattsPerHorsepower = 745.699872;

    /// <summary>A power given in kilowatts.</summary>
    public static Power FromKilowatts(double kilowatts) => new(kilowatts * 1000);

    /// <summary>A power given in mechanical horsepower (not the metric one of 735.5 W).</summary>
    public static Power FromHorsepower(double horsepower) => new(horsepower * WattsPerHorsepower);

    /// <summary>The power in kilowatts.</summary>
    public double Kilowatts => Watts / 1000;

    /// <summary>The power in mechanical horsepower.</summary>
    public double Horsepower => Watts / WattsPerHorsepower;
}
