using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Gauging.Studies;

namespace WearWatch.Dashboard.Engineer.Workbench.Studies;

/// <summary>What the page says of a study.</summary>
public sealed record StudyView
{
    /// <summary>How large it is.</summary>
    public required Phrase Size { get; init; }

    /// <summary>What to do.</summary>
    public required Phrase Advice { get; init; }

    /// <summary>Whether it is good, usable or neither: true, null, false.</summary>
    public required bool? Good { get; init; }

    /// <summary>The ways in which it was worked out.</summary>
    public required IReadOnlyList<Phrase> Columns { get; init; }

    /// <summary>The figures, one of each way.</summary>
    public required IReadOnlyList<StudyLine> Rows { get; init; }

    /// <summary>The table of the analysis of variance.</summary>
    public required IReadOnlyList<VarianceCells> Variance { get; init; }

    /// <summary>What was made of the interaction.</summary>
    public required Phrase Interaction { get; init; }

    /// <summary>The view of a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="limit">The limit in the readings' unit; null when not told.</param>
    public static StudyView Of(CrossedStudy study, double? limit)
    {
        var byVariance = MeasuringQuality.ByVariance(study);
        IReadOnlyList<MeasuringQuality> ways = MeasuringQuality.ByRanges(study) is { } byRanges
            ? [byVariance, byRanges]
            : [byVariance];
        var table = VarianceTable.Of(study);
        return new StudyView
        {
            Size = Phrase.Counted(
                study.Trials,
                $"{study.Sections.Count:#,0} sections, {study.People.Count:#,0} people or tools, {study.Trials:#,0} trial each",
                $"{study.Sections.Count:#,0} sections, {study.People.Count:#,0} people or tools, {study.Trials:#,0} trials each"),
            Advice = $"{byVariance.Advice}",
            Good = byVariance.DistinctCategories < 5
                || byVariance.MeasuringPercentOfTotal > 30 ? false : byVariance.MeasuringPercentOfTotal <= 10 ? true : null,
            Columns = [.. ways.Select(w => Phrase.Of($"{w.Method}"))],
            Rows = [.. FiguresOf(ways, limit)],
            Variance =
            [
                Line($"Sections", table.Sections), Line($"People", table.People), Line($"Sections by people", table.Interaction),
                Line($"Repeats", table.Repeats),
            ],
            Interaction = table.InteractionP > MeasuringQuality.PoolingProbability
                ? Phrase.Of($"Interaction F = {Text(table.InteractionF)}, p = {table.InteractionP:0.000}: taken for chance and "
                    + $"pooled with the repeats.")
                : $"Interaction F = {Text(table.InteractionF)}, p = {table.InteractionP:0.000}: some people see some sections "
                    + $"differently.",
        };
    }

    private static IEnumerable<StudyLine> FiguresOf(IReadOnlyList<MeasuringQuality> ways, double? limit)
    {
        yield return Share($"Repeatability: the same person again", w => w.RepeatSd);
        yield return Share($"Reproducibility: between people", w => w.PeopleSd);
        yield return Share($"Measuring, both together", w => w.MeasuringSd);
        yield return Share($"Between sections", w => w.SectionSd);
        yield return Share($"Everything", w => w.TotalSd);
        yield return new($"Measuring over everything", [.. ways.Select(w => Percent(w.MeasuringPercentOfTotal))]);
        yield return new($"Classes of wear it can tell apart",
            [.. ways.Select(w => w.DistinctCategories >= 1000 ? T["any"] : Show.Count(w.DistinctCategories))]);
        if (limit is { } l)
            yield return new($"Six deviations over the limit", [.. ways.Select(w => Percent(w.PercentOfLimit(l)))]);

        StudyLine Share(Phrase name, Func<MeasuringQuality, double> sd) =>
            new(name, [.. ways.Select(w => T[$"{Text(sd(w))} ({w.VariancePercent(sd(w)):0.0} % of the variance)"])]);
    }

    private static VarianceCells Line(Phrase name, VarianceLine line) =>
        new(name, Show.Count(line.DegreesOfFreedom), Text(line.SumOfSquares), Text(line.MeanSquare));

    private static string Percent(double value) => value.ToString("0.0", CultureInfo.CurrentCulture) + " %";

    /// <summary>Four digits that matter.</summary>
    private static string Text(double value) => value.ToString("G4", CultureInfo.CurrentCulture);
}

/// <summary>A figure, worked out in one or two ways.</summary>
public sealed record StudyLine(Phrase Name, IReadOnlyList<string> Values);

/// <summary>A line of the table of variance.</summary>
public sealed record VarianceCells(Phrase Name, string DegreesOfFreedom, string SumOfSquares, string MeanSquare);
