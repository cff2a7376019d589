using WearWatch.Chains;
using WearWatch.Criteria;
using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>What is stricter where a chain lifts or holds a load: it is judged by the upper end of what is known of it.</summary>
/// <remarks>
/// The upper end lies two standard uncertainties above (about 95 %), of the last reading or of the track, whichever is higher;
/// what stays the same all a chain's life (its new length, a temperature that was guessed) counts in. From the first reading
/// whose upper end reached the attention mark of its standard, a competent person may set a date of at most three months:
/// docs/references.md [30]. A reading counts until a person corrects or withdraws it.
/// </remarks>
/// <param name="UpperPercent">The upper end, in percent of elongation.</param>
/// <param name="MarkedAt">When the attention mark was reached; null when it was not, or there is none.</param>
internal sealed record LiftingWear(double UpperPercent, DateTimeOffset? MarkedAt)
{
    /// <summary>The longest time that a competent person may set beyond the attention mark. docs/references.md [30].</summary>
    public static int MostMonths { get; } = (int)LiftingCriteria.ValueOf("leaf-length-plan-months");

    /// <summary>The day from which it is out of use, whatever a forecast says; null when no mark was reached.</summary>
    public DateTimeOffset? OutOfUseBy => MarkedAt?.AddMonths(MostMonths);

    /// <summary>For a chain as it is followed; null where it does not lift or was not measured yet.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">All its readings.</param>
    /// <param name="observations">Those of the chain that runs now, at least one.</param>
    /// <param name="view">What its track says.</param>
    /// <param name="markPercent">The attention mark, in percent; null where its limit has none.</param>
    /// <param name="now">The moment for which it is asked; an undated reading without a dated one before counts as old.</param>
    public static LiftingWear? Of(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<JudgedObservation> observations, WearNow view,
        double? markPercent, DateTimeOffset now)
    {
        if (!card.HoldsLoad || observations.Count == 0) return null;
        var last = Uncertainty(card, readings, observations[^1].Observation);
        var lasting = Math.Max(0, last * last - Math.Pow(observations[^1].Observation.ScatterPercent, 2));
        var ofTrack = view.ElongationPercent + 2 * Math.Sqrt(Math.Pow(view.ElongationDeviationPercent, 2) + lasting);
        return new LiftingWear(
            Math.Max(ofTrack, observations[^1].Observation.ElongationPercent + 2 * last),
            MarkedWhen(card, readings, observations, markPercent, now));
    }

    private static DateTimeOffset? MarkedWhen(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<JudgedObservation> observations, double? markPercent,
        DateTimeOffset now)
    {
        DateTimeOffset? dated = card.FittedAt;
        foreach (var observation in observations.Select(o => o.Observation))
        {
            dated = readings[observation.ReadingIndex].TakenAt ?? dated;
            if (observation.ElongationPercent + 2 * Uncertainty(card, readings, observation) >= markPercent)
                return dated ?? now.AddMonths(-MostMonths);
        }

        return null;
    }

    /// <summary>Standard uncertainty of a reading with all that it is made of; that of its scatter where it is doubted.</summary>
    private static double Uncertainty(ChainCard card, IReadOnlyList<Reading> readings, Observation observation)
    {
        var reading = readings[observation.ReadingIndex];
        return Gauge.Measure(
            card.PitchMm, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC, reading.LengthUncertaintyMm)
            is GaugeOutcome.Measured measured
            ? Math.Max(measured.Elongation.StandardUncertaintyPercent, observation.ScatterPercent)
            : observation.ScatterPercent;
    }
}
