namespace WearWatch.Units;

/// <summary>A force or a pull.</summary>
/// <param name="Newtons">The force in newtons.</param>
public readonly record struct Force(double Newtons)
{
    /// <summary>Newtons in a pound-force, exactly: 0.45359237 kg at 9.80665 m/s2.</summary>
    public const double NewtonsPerPound = 4.4482216152605;

    /// <summary>Standard gravity in metres a second squared, exact by definition: docs/references.md [39].</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>A force given in pounds-force.</summary>
    public static Force FromPounds(double pounds) => new(pounds * NewtonsPerPound);

    /// <summary>The force in kilonewtons.</summary>
    public double Kilonewtons => Newtons / 1000;

    /// <summary>The force in pounds-force.</summary>
    public double Pounds => Newtons / NewtonsPerPound;
}
