using WearWatch.Gauging;

namespace WearWatch.Signals.Passes;

/// <summary>What a day of passes says of a chain.</summary>
/// <param name="Pitches">Pitches between the sensors at 20 degrees of the chain, a whole number and a part.</param>
/// <param name="ElongationPercent">Elongation in percent, at 20 degrees.</param>
/// <param name="Components">What its uncertainty is made of.</param>
/// <param name="TemperatureC">Mean temperature of the chain in degrees Celsius.</param>
/// <param name="Bursts">Bursts that were used.</param>
/// <param name="CountedByPattern">Whether the pattern of the joints gave the whole number; else what was expected did.</param>
public sealed record PassReading(
    double Pitches, double ElongationPercent, IReadOnlyList<UncertaintyComponent> Components, double TemperatureC, int Bursts,
    bool CountedByPattern)
{
    /// <summary>Standard uncertainty of the elongation, in percent.</summary>
    public double StandardUncertaintyPercent =>
        Math.Sqrt(Components.Sum(c => c.StandardUncertaintyPercent * c.StandardUncertaintyPercent));

    /// <summary>Standard uncertainty by what changes from day to day, in percent.</summary>
    public double DayToDayPercent => Math.Sqrt(
        Components.Where(c => c.Repeats).Sum(c => c.StandardUncertaintyPercent * c.StandardUncertaintyPercent));
}
