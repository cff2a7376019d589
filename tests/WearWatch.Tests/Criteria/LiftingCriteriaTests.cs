using System.Globalization;
using System.Text.RegularExpressions;
using WearWatch.Chains.Families;
using WearWatch.Criteria;

namespace WearWatch.Tests.Criteria;

public sealed class LiftingCriteriaTests
{
    [Fact]
    public void Every_criterion_has_words_a_part_a_region_a_source_and_a_certainty_under_a_name_of_its_own()
    {
        Assert.True(LiftingCriteria.All.Count > 260, $"{LiftingCriteria.All.Count} criteria");
        Assert.Equal(LiftingCriteria.All.Count, LiftingCriteria.All.Select(c => c.Id).Distinct().Count());
        Assert.All(LiftingCriteria.All, criterion =>
        {
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)+$", criterion.Id);
            Assert.True(criterion.Words.Form.Length > 5 && !criterion.Part.IsEmpty && criterion.Regions.Count > 0, criterion.Id);
            Assert.Equal(criterion.Value is null, criterion.Unit.IsEmpty);
            Assert.Matches(
                @"^docs/references\.md \[\d+\]|^from memory|^worked out; docs|^common practice", criterion.SourceWords);
        });
    }

    [Fact]
    public void Every_source_stands_in_the_list_of_sources()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "WearWatch.sln"))) folder = Path.GetDirectoryName(folder)!;
        var numbers = Regex.Matches(File.ReadAllText(Path.Combine(folder, "docs", "references.md")), @"(?m)^\| (\d+) \|")
            .Select(m => int.Parse(m.Groups[1].Value)).ToHashSet();
        Assert.Subset(numbers, LiftingCriteria.All.SelectMany(c => c.Source).ToHashSet());
    }

    // Misprints that were met in makers' papers: a diameter limit of 21.2 mm for a 5 mm chain. Examples lie within 0.80 to 0.95 d
    // and 1.01 to 1.12 times the pitch (worked out from the tables read: docs/references.md [74]).
    [Theory]
    [InlineData("5x15", 5, 15)]
    [InlineData("8x24", 8, 24)]
    [InlineData("9x27", 9, 27)]
    [InlineData("13x36", 13, 36)]
    [InlineData("16x45", 16, 45)]
    public void A_makers_example_is_plausible_and_is_never_a_default(string size, double d, double pitch)
    {
        Assert.InRange(LiftingCriteria.ValueOf($"link-example-{size}-diameter"), 0.80 * d, 0.95 * d);
        Assert.InRange(LiftingCriteria.ValueOf($"link-example-{size}-one"), 1.01 * pitch, 1.12 * pitch);
        Assert.InRange(LiftingCriteria.ValueOf($"link-example-{size}-eleven"), 1.01 * 11 * pitch, 1.12 * 11 * pitch);
        Assert.Equal(CriterionAction.Example, LiftingCriteria.Of($"link-example-{size}-one").Action);
    }

    // 29 CFR 1910.184 table N-184-1 and 1926.251: least size and greatest wear make up the nominal size. docs/references.md [85],
    // [86].
    [Theory]
    [InlineData("1-4-in", 0.25)]
    [InlineData("3-8-in", 0.375)]
    [InlineData("1-2-in", 0.5)]
    [InlineData("5-8-in", 0.625)]
    [InlineData("3-4-in", 0.75)]
    [InlineData("7-8-in", 0.875)]
    [InlineData("1-in", 1)]
    [InlineData("1-1-4-in", 1.25)]
    [InlineData("1-3-4-in", 1.75)]
    public void Least_size_and_greatest_wear_of_the_legal_tables_add_up(string size, double inches) =>
        Assert.Equal(
            25.4 * inches,
            LiftingCriteria.ValueOf("sling-least-us-" + size) + LiftingCriteria.ValueOf("sling-wear-us-" + size), 0.011);

    // Sources: docs/references.md [30], [64], [74], [75].
    [Fact]
    public void The_figures_that_rules_rest_on_are_those_of_the_table()
    {
        Assert.Equal((2, 3), (LiftingCriteria.ValueOf("leaf-length-plan"), LiftingCriteria.ValueOf("leaf-length-discard")));
        Assert.Equal(3, LiftingCriteria.ValueOf("leaf-length-plan-months"));
        Assert.Equal(5, LiftingCriteria.ValueOf("leaf-plate-height"));
        Assert.Equal(ChainFamily.Named("round_link").LiftingLimit.Percent, LiftingCriteria.ValueOf("link-length-powered"));
        Assert.Equal(90, LiftingCriteria.ValueOf("link-diameter"));
        Assert.Throws<KeyNotFoundException>(() => LiftingCriteria.Of("leaf-anything"));
        Assert.Throws<InvalidOperationException>(() => LiftingCriteria.ValueOf("leaf-pin-proud"));
    }

    [Fact]
    public void A_figure_inside_a_criterion_is_a_fact_that_each_language_writes_its_own_way()
    {
        var words = LiftingCriteria.Of("leaf-length-13-pins").Words;
        Assert.Equal("Worn length over 13 pins of {0} mm pitch, which is {1} %: the stricter 3 % holds", words.Form);
        Assert.Contains("25,4 mm pitch, which is 3,125 %",
            words.In(form => form, new CultureInfo("de") { NumberFormat = { NumberDecimalSeparator = "," } }),
            StringComparison.Ordinal);
        Assert.Equal("Size 1/4 in: least thickness anywhere, never interpolated",
            LiftingCriteria.Of("sling-least-us-1-4-in").Words.ToString());
    }

    [Fact]
    public void No_figure_with_decimals_stands_in_a_form() =>
        Assert.All(LiftingCriteria.All, c => Assert.DoesNotMatch(@"\d\.\d", c.Words.Form));

    [Fact]
    public void A_criterion_that_was_only_recalled_says_so() => Assert.All(
        LiftingCriteria.All.Where(c => c.Certainty == CriterionCertainty.FromMemory),
        c => Assert.StartsWith("from memory", c.SourceWords, StringComparison.Ordinal));
}
