using WearWatch.Criteria;
using WearWatch.Dashboard.Lifting;
using WearWatch.Dashboard.Tests.Language;
using static WearWatch.Dashboard.Kit.Language.Localized;

namespace WearWatch.Dashboard.Tests.Lifting;

public sealed class CriteriaFilterTests
{
    [Fact]
    public void Without_a_filter_all_criteria_of_the_table_are_shown() =>
        Assert.Equal(LiftingCriteria.All, new CriteriaFilter().Found);

    [Fact]
    public void A_filter_reads_back_from_its_address_and_finds_what_it_says()
    {
        var filter = new CriteriaFilter
        {
            Search = "mark pin",
            Family = CriterionFamily.Leaf,
            Action = CriterionAction.OutOfUse,
            Certainty = CriterionCertainty.Published,
            Region = "uk",
        };
        Assert.Equal(filter, CriteriaFilter.FromQuery(filter.ToQuery()));
        Assert.Equal(new CriteriaFilter(), CriteriaFilter.FromQuery("?family=belt&region=nowhere&action=shout"));
        foreach (var family in Enum.GetValues<CriterionFamily>())
        {
            var found = new CriteriaFilter { Family = family }.Found;
            Assert.NotEmpty(found);
            Assert.All(found, c => Assert.True(c.Family == family || c.Family == CriterionFamily.Any));
        }

        foreach (var region in CriteriaFilter.Regions)
            Assert.All(new CriteriaFilter { Region = region }.Found, c => Assert.Contains(region, c.Regions));
        Assert.Equal(
            LiftingCriteria.All.Count(c => c.Certainty == CriterionCertainty.FromMemory),
            new CriteriaFilter { Certainty = CriterionCertainty.FromMemory }.Found.Count);
    }

    [Theory]
    [InlineData("en", "Never ", "from memory", "2 percent")]
    [InlineData("de", "Nie ", "aus dem Gedächtnis", "2 Prozent")]
    [InlineData("es", "Nunca ", "de memoria", "2 por ciento")]
    public void What_is_never_done_says_so_first_and_what_was_recalled_says_so(
        string code, string never, string recalled, string figure) => InLanguage.Of(code, () =>
        {
            Assert.All(
                LiftingCriteria.All.Where(c => c.Action == CriterionAction.Forbidden),
                c => Assert.StartsWith(never, T[c.Words], StringComparison.Ordinal));
            Assert.StartsWith(recalled, CriterionWords.Of(CriterionCertainty.FromMemory), StringComparison.Ordinal);
            Assert.Equal(figure, CriterionWords.Figure(LiftingCriteria.Of("leaf-length-plan")));
            Assert.Empty(CriterionWords.Figure(LiftingCriteria.Of("leaf-pin-proud")));
        });

    [Fact]
    public void A_person_finds_in_the_words_of_his_or_her_language() => InLanguage.Of("de", () =>
    {
        Assert.Contains(LiftingCriteria.Of("leaf-pin-turned"), new CriteriaFilter { Search = "bolzen verdreht" }.Found);
        Assert.Empty(new CriteriaFilter { Search = "pin has turned" }.Found);
    });
}
