namespace WearWatch.Signals.Passes;

/// <summary>
/// What is expected of a day of passes before it is looked at: from the last such reading, or else from the track.
/// </summary>
/// <param name="ElongationPercent">Expected elongation in percent.</param>
/// <param name="StandardDeviationPercent">How sure that is, in percent.</param>
/// <param name="Days">Days since the reading that it comes from.</param>
public sealed record PassExpectation(double ElongationPercent, double StandardDeviationPercent, double Days)
{
    /// <summary>No chain that still runs wears faster, in percent a day: 3 % in six weeks. Common practice.</summary>
    private const double FastestWearPercentPerDay = 0.07;

    private const double Deviations = 3.5;

    /// <summary>Whether an elongation can follow: as much again, or more by what a chain can wear.</summary>
    public bool Allows(double elongationPercent, double standardUncertaintyPercent)
    {
        var reach = Deviations * Math.Sqrt(
            StandardDeviationPercent * StandardDeviationPercent + standardUncertaintyPercent * standardUncertaintyPercent);
        var growth = elongationPercent - ElongationPercent;
        return growth >= -reach && growth <= reach + FastestWearPercentPerDay * Math.Max(Days, 1);
    }
}
