namespace WearWatch.Lubrication.Intervals;

/// <summary>A shape in which a wear rate may rise with the age of the oil; how far it rises is another matter.</summary>
/// <param name="Name">In words.</param>
/// <param name="Integral">The rise summed from fresh oil to an age in running hours, in any unit; zero at zero.</param>
internal sealed record AgeShape(string Name, Func<double, double> Integral)
{
    /// <summary>Which of the shapes rises steadily.</summary>
    public const int Steady = 1;

    /// <summary>
    /// Six shapes: at once, steadily, ever faster, up to a level, and from half or from all of the plant's usual interval on.
    /// Nobody has measured the right one for chains (no source found), so that they are held side by side and weighed by the
    /// readings.
    /// </summary>
    /// <param name="usualHours">The plant's usual interval, in running hours.</param>
    public static IReadOnlyList<AgeShape> For(double usualHours) =>
    [
        Power("at once, then slower", 0.5),
        Power("steadily", 1),
        Power("ever faster", 2),
        new("up to a level", age => age - usualHours * (1 - Math.Exp(-age / usualHours))),
        From("after half of the usual interval", 0.5 * usualHours),
        From("after the usual interval", usualHours),
    ];

    /// <summary>The rise averaged over a steady interval.</summary>
    public double Mean(double intervalHours) => Integral(intervalHours) / intervalHours;

    private static AgeShape Power(string name, double power) => new(name, age => Math.Pow(age, power + 1) / (power + 1));

    private static AgeShape From(string name, double hours) =>
        new(name, age => age <= hours ? 0 : (age - hours) * (age - hours) / 2);
}
