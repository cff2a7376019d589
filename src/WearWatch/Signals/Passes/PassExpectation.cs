namespace WearWatch.Signals.Passes;

/// <summary>
/// What is expected of a day of passes before it is looked at: from the last such reading, or else from the track.
/// </summary>
/// <param name="ElongationPercent">Expected elongation in percent.</param>
/// <param name="StandardDeviationPercent">How sure that is, in percent.</param>
/// <param name="Days">Days since the reading that it comes from.</param>
public sealed record PassExpectation(double ElongationPercent, double StandardDeviationPercent, double Days)
{
    private const double Deviations = 3.5;

    /// <summary>Another count is ruled out when it lies so far off.</summary>
    private const double RuledOut = 5.5;

    private const int Reach = 4;

    /// <summary>
    /// The fastest wear in percent a day. Where nothing is known of the chain: 3 % in six weeks, common practice; no chain that
    /// still runs wears faster.
    /// </summary>
    public double FastestPercentPerDay { get; init; } = 0.07;

    /// <summary>Whether an elongation can follow: as much again, or more by what a chain can wear.</summary>
    public bool Allows(double elongationPercent, double standardUncertaintyPercent) =>
        Allows(elongationPercent, standardUncertaintyPercent, Deviations, FastestPercentPerDay * Math.Max(Days, 1));

    /// <summary>
    /// The one whole number of pitches that can follow; null when none can, or when another one is not ruled out.
    /// </summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="fraction">The part of a pitch that was seen.</param>
    internal int? Count(SensorPair pair, double fraction)
    {
        int? only = null;
        var middle = Nearest(pair, fraction);
        for (var pitches = Math.Max(1, middle - Reach); pitches <= middle + Reach; pitches++)
        {
            var percent = pair.ElongationPercent(pitches + fraction, Gauging.Gauge.ReferenceTemperatureC);
            if (!Allows(percent, 0, RuledOut, FastestPercentPerDay * Math.Max(Days, 1))) continue;
            if (only is not null) return null;
            only = pitches;
        }

        return only;
    }

    /// <summary>The whole number of pitches that brings the elongation nearest to what is expected.</summary>
    internal int Nearest(SensorPair pair, double fraction) =>
        (int)Math.Round(pair.PitchesAt(ElongationPercent, Gauging.Gauge.ReferenceTemperatureC) - fraction);

    /// <summary>
    /// The whole number of passes that goes with what is expected, without any wear since, if the sensors tell so many pitches by
    /// each pass; null when none does.
    /// </summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="fraction">The part of a pass that would have been seen.</param>
    /// <param name="pitchesPerPass">One; two of a chain of which each second roller is seen.</param>
    internal int? Fits(SensorPair pair, double fraction, double pitchesPerPass)
    {
        var off = pair.PitchesAt(ElongationPercent, Gauging.Gauge.ReferenceTemperatureC) / pitchesPerPass - fraction;
        var reach = Deviations * pair.NominalPitches * StandardDeviationPercent / 100;
        return pitchesPerPass * Math.Abs(BurstPhase.Wrap(off)) <= reach ? (int)Math.Round(off) : null;
    }

    private bool Allows(double elongationPercent, double standardUncertaintyPercent, double deviations, double wearPercent)
    {
        var reach = deviations * Math.Sqrt(
            StandardDeviationPercent * StandardDeviationPercent + standardUncertaintyPercent * standardUncertaintyPercent);
        var growth = elongationPercent - ElongationPercent;
        return growth >= -reach && growth <= reach + wearPercent;
    }
}
