using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Signals.Passes;

/// <summary>Makes one elongation of a day of passes, or says why it does not.</summary>
/// <remarks>
/// Each burst gives the part of a pitch (<see cref="BurstPhase"/>); brought to 20 degrees of the chain, and freed of what the
/// channels' clocks and delay add (<see cref="DayTrend"/>), the mean of the day counts, and bursts far from it do not. The whole
/// pitches come from the pattern of the joints, over the whole chain (<see cref="ChainLoop"/>) or within the bursts
/// (<see cref="JointPattern"/>), or from what is expected where neither tells. Derivation, sources and figures:
/// docs/signals.md.
/// </remarks>
public static class PassDay
{
    /// <summary>Fewer bursts make no reading.</summary>
    public const int FewestBursts = 6;

    private const double MostBadShare = 0.15;
    private const double MostUnusedShare = 0.4;

    /// <summary>One of the sensors tells so many times as much as the other: not by missed pulses, which are counted.</summary>
    private const double SameRate = 1.25;

    /// <summary>So far the pattern has to speak for the other direction, where both go with what is expected.</summary>
    private const double LeadOfWays = 1;

    /// <summary>So far for another number of rollers.</summary>
    private const double LeadOfRollers = 0.75;

    /// <summary>Evaluates a day.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="bursts">The day's bursts.</param>
    /// <param name="expected">What is expected; null when nothing is known.</param>
    public static PassOutcome Evaluate(SensorPair pair, IReadOnlyList<PassBurst> bursts, PassExpectation? expected)
    {
        var day = DayOfBursts.Of(pair, bursts);
        var faults = day.Faults;
        if (day.RateRatio is > SameRate or < 1 / SameRate)
            return Doubt(PassDoubt.WrongRollers,
                $"The second sensor counts {day.RateRatio:0.0} passes for each of the first: both are to see each roller once.");
        if (day.Bursts.Count < FewestBursts || day.Bursts.Count < (1 - MostUnusedShare) * bursts.Count)
            return Doubt(PassDoubt.TooLittle,
                $"Only {day.Bursts.Count} of {bursts.Count} bursts can be used. Look whether both sensors see the chain.");
        var trend = DayTrend.Of(pair, day.Bursts);
        if (trend.Moved() is { } move)
            return Doubt(PassDoubt.SensorMoved,
                $"The phase moved by {move.Pitches:0.000} pitches ({move.Pitches * pair.PitchMm:0.0} mm) {move.Hours:0.0} h "
                    + $"after the day's first passes: a sensor moved, or the chain was changed. Measure the distance again.");
        if (faults.Missed + faults.Doubled > MostBadShare * faults.Passes)
            return Doubt(PassDoubt.BadSignal,
                $"{faults.Missed} pulses missed and {faults.Doubled} too many of {faults.Passes}: clean and set the sensors.");

        var fraction = trend.Phase - Math.Floor(trend.Phase);
        var joints = day.Pattern(pair, fraction);
        var loop = ChainLoop.Of(pair, day.Trains, fraction, joints.Half);
        var pattern = loop?.Count(joints.Highest) ?? joints.Count();
        if (pattern?.Kind == PatternKind.Backwards)
            return Doubt(PassDoubt.Backwards,
                $"Each link passes the second sensor before the first: swap the wires, or the chain runs backwards.");
        if (pattern is { Kind: not PatternKind.EachRoller })
            return Doubt(PassDoubt.WrongRollers, pattern.Kind == PatternKind.HalfPitches
                ? Phrase.Of($"The sensors count each pitch twice: set them so that each roller is counted once.")
                : $"The sensors count each second roller only: set them so that each roller is counted once.");
        if ((pattern?.Pitches ?? expected?.Count(pair, fraction)) is not { } whole)
            return Doubt(
                PassDoubt.WrongCount, $"How many pitches lie between the sensors is not known: measure the chain once by tape.");
        if (pattern is null && OtherWay(pair, fraction, whole, expected!, Prefers) is { } other)
            return Doubt(PassDoubt.WrongCount, other);

        var pitches = whole + fraction;
        var elongation = pair.ElongationPercent(pitches, Gauge.ReferenceTemperatureC);
        var reading = new PassReading(
            pitches, elongation, PassBudget.Of(pair, pitches, trend.Scatter, Timing(), elongation),
            day.MeanTemperatureC, day.Bursts.Count, pattern is not null);
        if (elongation is < 100 * (Gauge.ShortestShare - 1) or > 100 * (Gauge.LongestShare - 1))
            return Doubt(PassDoubt.WrongCount,
                $"{elongation:0.0} %: no chain runs so. Measure the distance again.");
        if (expected?.Allows(elongation, reading.StandardUncertaintyPercent) == false)
            return Doubt(expected.Nearest(pair, fraction) == whole ? PassDoubt.SensorMoved : PassDoubt.WrongCount,
                $"{elongation:0.00} % where {expected.ElongationPercent:0.00} % was expected: no chain wears so. A sensor was "
                    + $"moved, or the chain was changed or shortened and nobody recorded it.");
        return new PassOutcome.Measured(reading) { Faults = faults };

        PassOutcome.NotBelieved Doubt(PassDoubt doubt, Phrase why) => new(doubt, why) { Faults = faults };

        bool Prefers(int count, int other, double lead) =>
            joints.Prefers(count, other, lead) || loop?.Prefers(count, other, lead) == true;

        double Timing() => Math.Sqrt(trend.Timing * trend.Timing + day.Clock.Uncertainty * day.Clock.Uncertainty);
    }

    /// <summary>Holds a day that was measured against the earlier ones at the same sensors.</summary>
    /// <param name="outcome">What became of the day by itself.</param>
    /// <param name="course">The earlier days.</param>
    /// <param name="day">When, in the course's days.</param>
    public static PassOutcome Against(PassOutcome outcome, PassCourse course, double day) =>
        outcome is PassOutcome.Measured { Reading: var reading }
            && course.Doubt(new PassCourseDay(day, reading.ElongationPercent, reading.DayToDayPercent)) is { } why
            ? new PassOutcome.NotBelieved(PassDoubt.SensorMoved, why) { Faults = outcome.Faults }
            : outcome;

    /// <summary>
    /// Another way to see the chain that goes with what is expected as well, and that the pattern, weak as it is, speaks for;
    /// null when there is none.
    /// </summary>
    private static Phrase? OtherWay(
        SensorPair pair, double fraction, int whole, PassExpectation expected, Func<int, int, double, bool> prefers)
    {
        // Near a whole or a half pitch both directions give the same elongation, within 0.005 %.
        var isSameBackwards = Math.Abs(BurstPhase.Wrap(2 * fraction)) < 0.5e-4 * pair.NominalPitches;
        return !isSameBackwards && expected.Fits(pair, 1 - fraction, 1) is { } back
                && prefers(-back - 1, whole, LeadOfWays)
                ? Phrase.Of($"Which way the chain runs is not certain, and it matters here: measure once by tape, and "
                    + $"look at the wires.")
            : expected.Fits(pair, fraction, 2) is { } few && prefers(few, whole, LeadOfRollers)
                || expected.Fits(pair, fraction, 0.5) is { } many && prefers(many, whole, LeadOfRollers)
                ? Phrase.Of($"Whether each roller is seen once is not certain: look at the sensors, or measure once "
                    + $"more by tape.")
            : null;
    }
}
