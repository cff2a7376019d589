using System.Reflection;
using System.Text.RegularExpressions;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Tests.Chains.Families;

/// <summary>Every kind of chain, found by reflection, is asked every question.</summary>
public sealed class ChainFamilyTests
{
    public static TheoryData<string> Families => [.. ChainFamily.All.Select(family => family.Name)];

    // The names stand in files, in the memory of plants and in what programs exchange: one may be added, none may change.
    [Fact]
    public void Names_in_files_stay_as_they_were()
    {
        string[] used =
            ["roller", "bush", "double_pitch", "conveyor", "leaf", "offset_link", "round_link", "inverted_tooth", "custom",
                "table_top"];
        Assert.Superset(used.ToHashSet(), ChainFamily.All.Select(family => family.Name).ToHashSet());
    }

    [Fact]
    public void Every_class_of_a_kind_is_in_the_list_once_under_a_name_and_at_a_place_of_its_own()
    {
        var classes = typeof(ChainFamily).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(ChainFamily))).ToHashSet();
        Assert.Equal(classes, ChainFamily.All.Select(family => family.GetType()).ToHashSet());
        Assert.Equal(classes.Count, ChainFamily.All.Select(family => family.Name).Distinct().Count());
        Assert.Equal(classes.Count, ChainFamily.All.Select(family => family.Words).Distinct().Count());
        Assert.Equal(classes.Count, ChainFamily.All.Select(family => family.Place).Distinct().Count());
        Assert.Single(ChainFamily.All, family => family.IsUsual);
    }

    [Fact]
    public void Every_question_is_open_to_every_kind_so_that_none_is_answered_by_silence() =>
        Assert.All(
            typeof(ChainFamily).GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .Where(method => method is { IsVirtual: true, IsFinal: false }),
            method => Assert.True(method.IsAbstract, $"{method.Name} has an answer that a kind may forget to look at."));

    [Theory]
    [MemberData(nameof(Families))]
    public void A_kind_is_found_by_its_name_however_it_is_written(string name)
    {
        Assert.Matches("^[a-z]+(_[a-z]+)*$", name);
        var family = ChainFamily.Named(name);
        Assert.Same(family, ChainFamily.Find(name.ToUpperInvariant()));
        Assert.Same(family, ChainFamily.Find(name.Replace('_', '-')));
        Assert.Same(family, ChainFamily.Find(name.Replace("_", "", StringComparison.Ordinal)));
        Assert.Equal(name, family.ToString());
        Assert.Null(ChainFamily.Find(name + "x"));
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_text_that_a_kind_answers_is_a_plain_sentence(string name)
    {
        var family = ChainFamily.Named(name);
        Phrase[] sentences =
        [
            .. family.MeasuringSteps, .. family.Cautions, family.ClosingStep, family.SprocketAdvice(),
            family.SprocketAdvice(2.5, 3), .. Looked(family).Select(point => point.Advice),
        ];
        Assert.All(sentences, sentence => Assert.Matches(@"^[A-Z].*\.$", sentence.ToString()));
        Assert.NotEmpty(family.PropAtSwap.ToString());
        Assert.Matches("^[a-z-]+$", family.Words.ToString());
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_figure_that_a_kind_answers_has_a_source_and_can_be(string name)
    {
        var family = ChainFamily.Named(name);
        Assert.All([family.GeneralLimit, .. family.LimitAdvice], limit =>
        {
            Assert.InRange(limit.Percent, 0.5, 5);
            Assert.NotEmpty(limit.Rule.ToString());
            Assert.Matches(@"^docs/references\.md \[\d+\]|^from memory", limit.Source);
        });
        Assert.True(family.GeneralLimit.IsVerified, "A figure from memory never governs.");
        Assert.False(family.GeneralLimit.PlanFromPercent >= family.GeneralLimit.Percent);
        Assert.All(
            Looked(family), point => Assert.Matches(@"^docs/references\.md \[\d+\]|^from memory|^common practice", point.Source));
        Assert.InRange(family.NewLengthTolerancePercent.Value, 0, 0.5);
        Assert.InRange(family.Span.Fewest, 2, family.Span.Enough);
        Assert.Matches(@"^docs/references\.md \[\d+\]|^from memory", family.Span.Source);
        Assert.True(family.UsualSwap.IsPossible);
        Assert.NotNull(family.OilFor(new Temperature(20)));
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void A_chain_is_made_up_to_its_length_and_takes_offset_links_only_where_links_alternate(string name)
    {
        var family = ChainFamily.Named(name);
        for (var pitches = 1; pitches <= 400; pitches++)
        {
            var cut = family.Cut(pitches);
            Assert.Equal(pitches, cut.CutPitches + cut.ConnectingLinks + cut.OffsetLinks);
            Assert.True(cut is { CutPitches: >= 0, ConnectingLinks: >= 0 }, $"{pitches}: {cut}");
            Assert.True(cut.OffsetLinks == 0 || family.LinksAlternate, $"{pitches}: {cut}");
        }
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void An_even_number_is_asked_for_just_where_links_alternate(string name)
    {
        var family = ChainFamily.Named(name);
        Assert.Equal(
            family.LinksAlternate, family.HowToMeasure.Any(step => step.ToString().Contains("even number",
                StringComparison.Ordinal)));
        if (family.Span is { IsFixed: true, Fewest: var span })
            Assert.Contains(family.HowToMeasure, step => Regex.IsMatch(step.ToString(), $@"\b{span}\b"));
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void A_chain_that_lifts_is_never_shortened_and_never_expected_to_wear_as_a_drive_does(string name)
    {
        var family = ChainFamily.Named(name);
        Assert.False(family.Shortens(lifts: true));
        Assert.True(family.Lifts(told: true));
        Assert.Equal(LimitReason.Lifting, family.LiftingLimit.Reason);
        Assert.True(family.LiftingLimit.IsVerified);
        if (!family.LiftsByNature) return;
        Assert.True(family.Lifts(told: false));
        Assert.False(family.MayBeShortened);
        Assert.False(family.HasExpectedWear);
        Assert.Equal(family.AlwaysLifts, family.Lifts(told: false, toldNot: true));
        if (!family.AlwaysLifts) return;
        Assert.Equal(family.GeneralLimit, family.LiftingLimit);
        Assert.Equal(family.CheckPoints(lifts: true), family.CheckPoints(lifts: false));
    }

    private static IEnumerable<CheckPoint> Looked(ChainFamily family) =>
        [.. family.CheckPoints(lifts: false), .. family.CheckPoints(lifts: true)];
}
