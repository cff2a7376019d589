using WearWatch.Dashboard.Engineer.Workbench.Studies;
using WearWatch.Gauging.Studies;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class StudyTextTests
{
    // Source: docs/references.md [47], AIAG's published study: 10 parts, 3 appraisers, 3 trials. Published: repeatability
    // 0.19993, reproducibility 0.22684 (roots of 0.03997 and 0.05146, interaction pooled), 4 distinct categories.
    [Fact]
    public void The_published_study_is_read_from_its_file_and_gives_the_published_figures()
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "gauging", "gauge_rr_aiag.csv"))
            .Select(l => l.Split(','));
        var text = string.Join('\n', lines.Select(c => $"{c[2]},{c[0]},{c[3]}"));
        var (readings, wrong) = StudyText.Read(text);
        Assert.Null(wrong);
        Assert.Equal(90, readings.Count);
        var view = StudyView.Of(Assert.IsType<StudyOutcome.Balanced>(CrossedStudy.Of(readings)).Study, limit: null);
        Assert.StartsWith("0.1999 (", view.Rows[0].Values[0], StringComparison.Ordinal);
        Assert.StartsWith("0.2268 (", view.Rows[1].Values[0], StringComparison.Ordinal);
        Assert.Equal("4", view.Rows.Single(r => r.Name.ToString().StartsWith("Classes", StringComparison.Ordinal)).Values[0]);
        Assert.Equal(2, view.Columns.Count);
        Assert.Contains("pooled", view.Interaction.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part\tA\tA\tB\tB\n1\t1.1\t1.2\t1.3\t1.4\n2\t2.1\t2.2\t2.3\t2.4")]
    [InlineData("part;A;;B;\n1;1.1;1.2;1.3;1.4\n2;2.1;2.2;2.3;2.4")]
    [InlineData("section,person,value\n1,A,1.1\n1,A,1.2\n1,B,1.3\n1,B,1.4\n2,A,2.1\n2,A,2.2\n2,B,2.3\n2,B,2.4")]
    [InlineData("1,A,1.1\n1,A,1.2\n1,B,1.3\n1,B,1.4\n2,A,2.1\n2,A,2.2\n2,B,2.3\n2,B,2.4")]
    public void Tables_and_lines_say_the_same(string text)
    {
        var (readings, wrong) = StudyText.Read(text);
        Assert.Null(wrong);
        Assert.Equal(
            [("1", "A", 1.1), ("1", "A", 1.2), ("1", "B", 1.3), ("1", "B", 1.4), ("2", "A", 2.1), ("2", "A", 2.2),
                ("2", "B", 2.3), ("2", "B", 2.4)],
            readings.Select(r => (r.Section, r.Person, r.Value)));
    }

    [Theory]
    [InlineData("only one line", "two lines")]
    [InlineData("1,A,x\n1,A,y", "not a number")]
    [InlineData("part\tA\tB\tB\n1\t1.1\tabout 2\t3", "column 3")]
    [InlineData("part\tA\tA\tA\n1\t1\t2\t3\t4", "5 columns")]
    public void What_cannot_be_read_is_said_with_its_place(string text, string reason) =>
        Assert.Contains(reason, StudyText.Read(text).Wrong?.ToString(), StringComparison.Ordinal);

    [Fact]
    public void The_invented_examples_are_studies()
    {
        Assert.IsType<StudyOutcome.Balanced>(CrossedStudy.Of(StudyText.Read(StudyExample.Crossed).Readings));
        Assert.Equal(9, StudyText.ReadKnown(StudyExample.Known).Readings.Count);
    }

    [Theory]
    [InlineData("300 300.1\n600 600.2", 2)]
    [InlineData("known,measured\n300,300.1\n600,600.2\n1200,1200.3", 3)]
    public void Known_lengths_are_read_with_or_without_a_heading(string text, int count) =>
        Assert.Equal(count, StudyText.ReadKnown(text).Readings.Count);

    [Fact]
    public void A_line_that_is_no_pair_is_refused_with_its_number() =>
        Assert.Contains("Line 2", StudyText.ReadKnown("300 300.1\n600").Wrong?.ToString(), StringComparison.Ordinal);
}
