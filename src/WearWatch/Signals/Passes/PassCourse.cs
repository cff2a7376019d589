using WearWatch.Phrases;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>
/// Earlier days at the same sensors, and how fast the chain wears: what a sensor that moves or creeps shows against.
/// </summary>
/// <remarks>
/// Distance and ripple are the same each day, so days are held against each other by what changes alone. A chain gets longer, and
/// by no more than its wear: a sensor shows that moves between two days, and one that creeps, both ways.
/// </remarks>
/// <param name="Days">The earlier days that were believed, in order of time.</param>
/// <param name="FastestPercentPerDay">How fast the chain wears at most, in percent a day.</param>
public sealed record PassCourse(IReadOnlyList<PassCourseDay> Days, double FastestPercentPerDay)
{
    private const double Deviations = 3.5;

    /// <summary>Of days that tell themselves how far they scatter: chance reaches it once in a year.</summary>
    private const double OwnDeviations = 3;
    private const int LastDays = 10;
    private const int CreepDays = 30;
    private const int FewestDays = 6;

    /// <summary>What is foretold of the scatter of days weighs as so many of them.</summary>
    private const double ForetoldDays = 2;

    /// <summary>A creep of less in all is nothing to send a person for, in percent.</summary>
    private const double SmallestCreepPercent = 0.03;

    /// <summary>What the last reading by another tool lets expect; null when there is none.</summary>
    public PassExpectation? Tape { get; init; }

    /// <summary>Why a day does not follow from the earlier ones or from the tape; null when it does.</summary>
    public Phrase? Doubt(PassCourseDay today) =>
        (Days.Count == 0 ? null : Jump(today) ?? Creep(today)) ?? AgainstTape(today);

    private Phrase? AgainstTape(PassCourseDay today) =>
        Tape?.Allows(today.ElongationPercent, today.UncertaintyPercent) == false
            ? Phrase.Of($"{today.ElongationPercent:0.00} % where the last reading by hand, {Tape.Days:0} days before, said "
                + $"{Tape.ElongationPercent:0.00} %: more than wear. Measure the distance again.")
            : null;

    private Phrase? Jump(PassCourseDay today)
    {
        var last = Days.TakeLast(LastDays).ToList();
        var (mean, days) = (last.Average(d => d.ElongationPercent), today.Day - last.Average(d => d.Day));
        var variance = today.UncertaintyPercent * today.UncertaintyPercent
            + last.Sum(d => d.UncertaintyPercent * d.UncertaintyPercent) / (last.Count * last.Count);
        var (least, most, deviations) = (0.0, FastestPercentPerDay * days, Deviations);
        // Some days tell themselves how fast it goes, within what wear can be, and how far they scatter about that.
        if (last.Count >= FewestDays
            && StraightLine.Fit([.. last.Select(d => d.Day)], [.. last.Select(d => d.ElongationPercent)])
                is TrendFit<StraightLine>.Fitted { Trend: var line })
        {
            least = most = Math.Clamp(line.Slope, 0, FastestPercentPerDay) * days;
            var slope = last.Average(d => d.UncertaintyPercent) / Math.Sqrt(line.SumSquaresX);
            variance += Math.Pow(Math.Min(slope, FastestPercentPerDay / 2) * days, 2);
            variance *= Scattered(last, line);
            deviations = OwnDeviations;
        }

        var (reach, growth) = (deviations * Math.Sqrt(variance), today.ElongationPercent - mean);
        return growth < least - reach || growth > most + reach
            ? Phrase.Of($"{growth:+0.000;-0.000} % in {days:0.#} days: more than wear and chance. A sensor was moved, or the "
                + $"chain was "
                + $"changed or shortened and nobody recorded it.")
            : null;
    }

    /// <summary>
    /// By which factor the variance of days differs from what their uncertainties foretell: as they scatter about their line,
    /// with what is foretold counted as some days more.
    /// </summary>
    private static double Scattered(List<PassCourseDay> days, StraightLine line)
    {
        var squares = days.Sum(d => Math.Pow(
            (d.ElongationPercent - line.MeanY - line.Slope * (d.Day - line.MeanX)) / d.UncertaintyPercent, 2));
        return Math.Min(1, (ForetoldDays + squares) / (ForetoldDays + days.Count - 2));
    }

    private Phrase? Creep(PassCourseDay today)
    {
        PassCourseDay[] days = [.. Days.TakeLast(CreepDays), today];
        if (days.Length < FewestDays) return null;
        if (StraightLine.Fit([.. days.Select(d => d.Day)], [.. days.Select(d => d.ElongationPercent)])
            is not TrendFit<StraightLine>.Fitted { Trend: var line }) return null;
        var uncertainty = Deviations * days.Average(d => d.UncertaintyPercent) / Math.Sqrt(line.SumSquaresX);
        var beyond = line.Slope < 0 ? line.Slope : Math.Max(0, line.Slope - FastestPercentPerDay);
        var span = days[^1].Day - days[0].Day;
        return Math.Abs(beyond) > uncertainty && Math.Abs(beyond) * span > SmallestCreepPercent
            ? Phrase.Of($"{line.Slope * span:+0.000;-0.000} % in {span:0} days, where wear gives "
                + $"{FastestPercentPerDay * span:0.000}"
                + $" % at most: a sensor creeps. Fix it and measure the distance again.")
            : null;
    }
}
