using WearWatch.Gauging.Studies;
using WearWatch.Phrases;

namespace WearWatch.Tests.Gauging.Studies;

public sealed class MeasuringQualityTests
{
    // Source: docs/references.md [47], the published table; printed to 4 or 5 decimals.
    [Fact]
    public void The_published_table_of_variance_comes_out()
    {
        var table = VarianceTable.Of(PublishedStudies.Aiag());
        var published = PublishedStudies.Json("gauge_rr_aiag.json").GetProperty("published");

        Assert.Equal(published.GetProperty("ss").GetProperty("part").GetDouble(), table.Sections.SumOfSquares, 5e-5);
        Assert.Equal(published.GetProperty("ss").GetProperty("operator").GetDouble(), table.People.SumOfSquares, 5e-5);
        Assert.Equal(published.GetProperty("ss").GetProperty("interaction").GetDouble(), table.Interaction.SumOfSquares, 5e-5);
        Assert.Equal(published.GetProperty("ss").GetProperty("repeatability").GetDouble(), table.Repeats.SumOfSquares, 5e-5);
        Assert.Equal(published.GetProperty("ss").GetProperty("total").GetDouble(), table.TotalSumOfSquares, 5e-5);
        Assert.Equal(published.GetProperty("ms").GetProperty("part").GetDouble(), table.Sections.MeanSquare, 5e-6);
        Assert.Equal(published.GetProperty("ms").GetProperty("operator").GetDouble(), table.People.MeanSquare, 5e-6);
        Assert.Equal(published.GetProperty("F_interaction").GetDouble(), table.InteractionF, 5e-4);
        Assert.Equal(published.GetProperty("p_interaction").GetDouble(), table.InteractionP, 5e-4);
    }

    // Oracle: R 4.2.2 aov, all digits, on the AIAG and on the Vardeman data [48]; 1e-9 leaves room for its printing.
    [Theory]
    [InlineData("gauge_rr_aiag.json")]
    [InlineData("gauge_rr_vardeman.json")]
    public void Sums_of_squares_are_those_of_an_independent_program(string file)
    {
        var study = file.Contains("aiag", StringComparison.Ordinal) ? PublishedStudies.Aiag() : PublishedStudies.Vardeman();
        var table = VarianceTable.Of(study);
        var computed = PublishedStudies.Json(file).GetProperty("computed");
        VarianceLine[] lines = [table.Sections, table.People, table.Interaction, table.Repeats];

        Assert.Equal(computed.GetProperty("df").EnumerateArray().Select(e => e.GetInt32()),
            lines.Select(l => l.DegreesOfFreedom));
        Assert.All(computed.GetProperty("ss").EnumerateArray().Zip(lines), pair =>
            Assert.Equal(1, pair.Second.SumOfSquares / pair.First.GetDouble(), 1e-9));
    }

    // Source: docs/references.md [47]: pooled components, shares and number of categories as published.
    [Fact]
    public void The_published_shares_of_variation_come_out()
    {
        var quality = MeasuringQuality.ByVariance(PublishedStudies.Aiag());

        Assert.Equal(0.03997, quality.RepeatSd * quality.RepeatSd, 5e-6);
        Assert.Equal(0.05146, quality.PeopleSd * quality.PeopleSd, 5e-6);
        Assert.Equal(1.08645, quality.SectionSd * quality.SectionSd, 5e-6);
        Assert.Equal(7.76, quality.VariancePercent(quality.MeasuringSd), 5e-3);
        Assert.Equal(3.39, quality.VariancePercent(quality.RepeatSd), 5e-3);
        Assert.Equal(4.37, quality.VariancePercent(quality.PeopleSd), 5e-3);
        Assert.Equal(92.24, quality.VariancePercent(quality.SectionSd), 5e-3);
        Assert.Equal(27.86, quality.MeasuringPercentOfTotal, 5e-3);
        Assert.Equal(4, quality.DistinctCategories);
    }

    // Source: docs/references.md [47]: the same data by averages and ranges, as published; the categories differ, and both are
    // published.
    [Fact]
    public void The_published_average_and_range_figures_come_out()
    {
        var quality = MeasuringQuality.ByRanges(PublishedStudies.Aiag())!;

        Assert.Equal(0.2019, quality.RepeatSd, 1e-4);
        Assert.Equal(0.2297, quality.PeopleSd, 1e-4);
        Assert.Equal(0.3058, quality.MeasuringSd, 1e-4);
        Assert.Equal(1.1046, quality.SectionSd, 1e-4);
        Assert.Equal(1.1461, quality.TotalSd, 1e-4);
        Assert.Equal(26.7, quality.MeasuringPercentOfTotal, 0.05);
        Assert.Equal(5, quality.DistinctCategories);
    }

    [Fact]
    public void Beyond_the_table_of_factors_ranges_are_not_used() =>
        Assert.Null(MeasuringQuality.ByRanges(PublishedStudies.Vardeman()));

    [Fact]
    public void Adding_a_long_length_to_every_reading_changes_nothing()
    {
        var far = PublishedStudies.Balanced(Readings(PublishedStudies.Aiag(), value => value + 1e6));

        Assert.Equal(MeasuringQuality.ByVariance(PublishedStudies.Aiag()).MeasuringSd,
            MeasuringQuality.ByVariance(far).MeasuringSd, 1e-8);
    }

    [Theory]
    [InlineData(0.05, 0.02, 2, "Good")]
    [InlineData(0.2, 0.1, 2, "Usable. The same person")]
    [InlineData(0.1, 0.28, 1, "Barely usable: only 4 classes")]
    [InlineData(0.5, 0.9, 1, "Not good enough to forecast from. People")]
    public void Advice_is_plain(double repeats, double people, double sections, string begins) =>
        Assert.StartsWith(begins, new MeasuringQuality(repeats, people, sections, Phrase.None).Advice.ToString(),
            StringComparison.Ordinal);

    // Six standard deviations of 0.05 mm against a limit of 3 % of 609.6 mm, 18.288 mm.
    [Fact]
    public void Measuring_can_be_held_against_the_limit() =>
        Assert.Equal(100 * 0.3 / 18.288, new MeasuringQuality(0.05, 0, 1, Phrase.None).PercentOfLimit(18.288), 1e-12);

    [Fact]
    public void Readings_that_make_no_study_are_refused_with_what_is_missing()
    {
        Assert.Contains("two sections", Refusal(new("A", "1", 1), new("A", "2", 1)), StringComparison.Ordinal);
        Assert.Contains("two people", Refusal(new("A", "1", 1), new("B", "1", 1)), StringComparison.Ordinal);
        Assert.Contains("at least twice", Refusal(new("A", "1", 1), new("A", "2", 1), new("B", "1", 1), new("B", "2", 1)),
            StringComparison.Ordinal);
        Assert.Contains("2 measured B 0 times", Refusal(new("A", "1", 1), new("A", "2", 1), new("B", "1", 1)),
            StringComparison.Ordinal);
        Assert.Contains("a number", Refusal(new("A", "1", double.NaN), new("B", "2", 1)), StringComparison.Ordinal);
    }

    private static string Refusal(params StudyReading[] readings) =>
        Assert.IsType<StudyOutcome.Refused>(CrossedStudy.Of(readings)).Reason.ToString();

    private static IEnumerable<StudyReading> Readings(CrossedStudy study, Func<double, double> change) =>
        from s in Enumerable.Range(0, study.Sections.Count)
        from p in Enumerable.Range(0, study.People.Count)
        from value in study.At(s, p)
        select new StudyReading(study.Sections[s], study.People[p], change(value));
}
