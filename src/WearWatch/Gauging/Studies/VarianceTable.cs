using MathNet.Numerics.Distributions;

namespace WearWatch.Gauging.Studies;

/// <summary>Two-way analysis of variance of a crossed study, both ways random.</summary>
/// <remarks>Sources: docs/references.md [47], [48].</remarks>
/// <param name="Sections">Between sections.</param>
/// <param name="People">Between people.</param>
/// <param name="Interaction">People who see some sections differently than others.</param>
/// <param name="Repeats">Between repeats of one person on one section.</param>
public sealed record VarianceTable(VarianceLine Sections, VarianceLine People, VarianceLine Interaction, VarianceLine Repeats)
{
    /// <summary>F of the interaction: its mean square over that of the repeats.</summary>
    public double InteractionF => Interaction.MeanSquare / Repeats.MeanSquare;

    /// <summary>Probability of such an F when there is no interaction.</summary>
    public double InteractionP => Repeats.MeanSquare > 0
        ? 1 - FisherSnedecor.CDF(Interaction.DegreesOfFreedom, Repeats.DegreesOfFreedom, InteractionF)
        : 1;

    /// <summary>Total sum of squares about the grand mean.</summary>
    public double TotalSumOfSquares =>
        Sections.SumOfSquares + People.SumOfSquares + Interaction.SumOfSquares + Repeats.SumOfSquares;

    /// <summary>The table of a study. Sums are taken about the grand mean, so that long lengths lose no digits.</summary>
    public static VarianceTable Of(CrossedStudy study)
    {
        var (sections, people, trials) = (study.Sections.Count, study.People.Count, study.Trials);
        var means = new double[sections, people];
        double grand = 0, withinSum = 0;
        for (var s = 0; s < sections; s++)
        {
            for (var p = 0; p < people; p++)
            {
                var mean = means[s, p] = study.At(s, p).Average();
                grand += mean / (sections * people);
                withinSum += study.At(s, p).Sum(v => (v - mean) * (v - mean));
            }
        }

        var (eachSection, eachPerson) = (Enumerable.Range(0, sections), Enumerable.Range(0, people));
        double[] ofSection = [.. eachSection.Select(s => eachPerson.Average(p => means[s, p]) - grand)];
        double[] ofPerson = [.. eachPerson.Select(p => eachSection.Average(s => means[s, p]) - grand)];
        double together = 0;
        for (var s = 0; s < sections; s++)
        {
            for (var p = 0; p < people; p++) together += Math.Pow(means[s, p] - grand - ofSection[s] - ofPerson[p], 2);
        }

        return new VarianceTable(
            new(people * trials * ofSection.Sum(d => d * d), sections - 1),
            new(sections * trials * ofPerson.Sum(d => d * d), people - 1),
            new(trials * together, (sections - 1) * (people - 1)),
            new(withinSum, sections * people * (trials - 1)));
    }
}
