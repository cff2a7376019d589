using WearWatch.Criteria;
using WearWatch.Dashboard.Lifting;

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

    [Fact]
    public void What_is_never_done_says_so_in_its_own_sentence_and_what_was_recalled_says_so()
    {
        Assert.All(
            LiftingCriteria.All.Where(c => c.Action == CriterionAction.Forbidden),
            c => Assert.StartsWith("Never ", CriterionWords.Of(c), StringComparison.Ordinal));
        Assert.StartsWith("from memory", CriterionWords.Of(CriterionCertainty.FromMemory), StringComparison.Ordinal);
        Assert.Equal("2 percent", CriterionWords.Figure(LiftingCriteria.Of("leaf-length-plan")));
        Assert.Empty(CriterionWords.Figure(LiftingCriteria.Of("leaf-pin-proud")));
    }
}
