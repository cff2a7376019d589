using WearWatch.Phrases;

namespace WearWatch.Gauging.Studies;

/// <summary>Where the differences between readings come from, and whether the measuring is good enough.</summary>
/// <param name="RepeatSd">Standard deviation of one person on one section (repeatability).</param>
/// <param name="PeopleSd">Standard deviation between people (reproducibility), their different view of sections included.</param>
/// <param name="SectionSd">Standard deviation between sections.</param>
/// <param name="Method">How it was worked out.</param>
public sealed record MeasuringQuality(double RepeatSd, double PeopleSd, double SectionSd, Phrase Method)
{
    /// <summary>
    /// With a probability above this the interaction is taken for chance and pooled with the repeats. Source: docs/references.md
    /// [47].
    /// </summary>
    public const double PoolingProbability = 0.25;

    /// <summary>Standard deviation of the measuring: repeats and people together.</summary>
    public double MeasuringSd => Math.Sqrt(RepeatSd * RepeatSd + PeopleSd * PeopleSd);

    /// <summary>Standard deviation of everything.</summary>
    public double TotalSd => Math.Sqrt(MeasuringSd * MeasuringSd + SectionSd * SectionSd);

    /// <summary>Measuring over everything, as standard deviations, in percent.</summary>
    public double MeasuringPercentOfTotal => 100 * MeasuringSd / TotalSd;

    /// <summary>Share of a standard deviation in the whole variance, in percent.</summary>
    public double VariancePercent(double sd) => 100 * sd * sd / (TotalSd * TotalSd);

    /// <summary>
    /// How many classes of wear the measuring can tell apart: <c>1.41 sections/measuring</c>, rounded down, at least 1.
    /// </summary>
    public int DistinctCategories =>
        MeasuringSd > 0 ? (int)Math.Clamp(Math.Floor(1.41 * SectionSd / MeasuringSd), 1, 1000) : 1000;

    /// <summary>
    /// Six standard deviations of measuring over a limit in the same unit, in percent: what of the limit the measuring eats up.
    /// </summary>
    public double PercentOfLimit(double limit) => 100 * 6 * MeasuringSd / limit;

    /// <summary>
    /// What to do, in plain words. Bounds: below 10 % good, above 30 % bad, five categories. Source: docs/references.md [47].
    /// </summary>
    public Phrase Advice
    {
        get
        {
            var worse = RepeatSd >= PeopleSd
                ? Phrase.Of(
                    $"The same person gets different figures: clean the chain, keep it taut, measure more pitches.")
                : $"People get different figures: agree on where the tape begins and ends, and on how taut.";
            return (MeasuringPercentOfTotal, DistinctCategories) switch
            {
                ( <= 10, >= 5) => $"Good: the differences are the chain's, not the measuring's.",
                ( <= 30, >= 5) => $"Usable. {worse}",
                ( <= 30, _) =>
                    $"Barely usable: only {DistinctCategories} classes of wear can be distinguished; five are wanted. {worse}",
                _ => $"Not good enough to forecast from. {worse}",
            };
        }
    }

    /// <summary>By analysis of variance; an interaction that may be chance is pooled with the repeats.</summary>
    /// <remarks>
    /// With s sections, p people, n trials: repeats <c>MSe</c>; interaction <c>(MSsp - MSe)/n</c>; people <c>(MSp - MSsp)/(s
    /// n)</c>;
    /// sections <c>(MSs - MSsp)/(p n)</c>; a negative one is zero. Sources: docs/references.md [47], [48].
    /// </remarks>
    public static MeasuringQuality ByVariance(CrossedStudy study)
    {
        var table = VarianceTable.Of(study);
        var pool = table.InteractionP > PoolingProbability;
        var repeats = pool ? table.Repeats.Pooled(table.Interaction) : table.Repeats;
        var yardstick = pool ? repeats : table.Interaction;
        var (s, p, n) = (study.Sections.Count, study.People.Count, study.Trials);

        var interaction = pool ? 0 : Math.Max(0, (table.Interaction.MeanSquare - table.Repeats.MeanSquare) / n);
        var people = Math.Max(0, (table.People.MeanSquare - yardstick.MeanSquare) / (s * n));
        var sections = Math.Max(0, (table.Sections.MeanSquare - yardstick.MeanSquare) / (p * n));
        return new MeasuringQuality(
            Math.Sqrt(repeats.MeanSquare), Math.Sqrt(people + interaction), Math.Sqrt(sections),
            pool ? Phrase.Of($"analysis of variance, interaction pooled") : $"analysis of variance with interaction");
    }

    /// <summary>By averages and ranges, as done with paper and pencil.</summary>
    /// <remarks>
    /// <c>EV = R K1</c>, <c>AV = sqrt((X K2)^2 - EV^2/(s n))</c>, <c>PV = Rp K3</c>: R mean range of a person on a section, X
    /// range of
    /// the people's means, Rp range of the sections' means. K are 1/d2*. Source: docs/references.md [47]; table of K from memory.
    /// </remarks>
    /// <returns>The quality; null beyond the table: 2 or 3 trials, 2 or 3 people, 2 to 10 sections.</returns>
    public static MeasuringQuality? ByRanges(CrossedStudy study)
    {
        ReadOnlySpan<double> k1 = [0.8862, 0.5908];
        ReadOnlySpan<double> k2 = [0.7071, 0.5231];
        ReadOnlySpan<double> k3 = [0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146];
        var (s, p, n) = (study.Sections.Count, study.People.Count, study.Trials);
        if (n > 3 || p > 3 || s > 10) return null;

        var sections = Enumerable.Range(0, s);
        var people = Enumerable.Range(0, p);
        var meanRange = sections.SelectMany(_ => people, (i, j) => RangeOf(study.At(i, j))).Average();
        var rangeOfPeople = RangeOf([.. people.Select(j => sections.Average(i => study.At(i, j).Average()))]);
        var rangeOfSections = RangeOf([.. sections.Select(i => people.Average(j => study.At(i, j).Average()))]);

        var repeats = meanRange * k1[n - 2];
        var between = Math.Pow(rangeOfPeople * k2[p - 2], 2) - repeats * repeats / (s * n);
        return new MeasuringQuality(repeats, Math.Sqrt(Math.Max(0, between)), rangeOfSections * k3[s - 2], $"averages and "
            + $"ranges");
    }

    private static double RangeOf(IReadOnlyList<double> values) => values.Max() - values.Min();
}
