namespace WearWatch.Entries;

/// <summary>What elongation a chain is expected to have, before it is measured.</summary>
/// <param name="MeanPercent">The middle of the expected elongation, in percent.</param>
/// <param name="StandardDeviationPercent">
/// Its standard deviation, in percent; of the elongation itself, without the scatter of reading it.
/// </param>
/// <param name="GrowthPercent">
/// How much of the elongation was worn off since the last reading, in percent: should the wear rate have jumped since, it is
/// more. Zero when that is not known.
/// </param>
public readonly record struct Expectation(double MeanPercent, double StandardDeviationPercent, double GrowthPercent = 0)
{
    /// <summary>Rates that jump do so by a median of 2.5 times, as the track takes it too; docs/gauging.md.</summary>
    private const double JumpGrowth = 1.46;

    private const double JumpGrowthDeviation = 1.1;

    /// <summary>A chain that has just been fitted: length tolerance and run-in. Common practice.</summary>
    public static Expectation NewChain { get; } = new(0.2, 0.15);

    /// <summary>What is expected if the wear rate jumped up since the last reading.</summary>
    /// <remarks>
    /// A method, and not a property: the words of a record tell its properties, and these would tell one another.
    /// </remarks>
    public Expectation IfRateRose() => new(
        MeanPercent + JumpGrowth * GrowthPercent,
        Math.Sqrt(StandardDeviationPercent * StandardDeviationPercent + Math.Pow(JumpGrowthDeviation * GrowthPercent, 2)));
}
