using WearWatch.Chains.Families;
using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.ChainList;

public sealed class ChainListQueryTests(ThreeChains plant) : IClassFixture<ThreeChains>
{
    [Fact]
    public async Task What_comes_due_first_stands_first_and_what_is_not_known_last() =>
        Assert.Equal(["K-1", "K-2", "K-3"], await NamesAsync(new ChainFilter()));

    [Fact]
    public async Task A_chain_without_forecast_is_not_known() =>
        Assert.Equal(["K-3"], await NamesAsync(new ChainFilter { Condition = Condition.NotKnown }));

    [Fact]
    public async Task Only_the_newest_forecast_counts() =>
        Assert.Empty(await NamesAsync(new ChainFilter { Condition = Condition.SwapNow }));

    [Fact]
    public async Task The_due_filter_leaves_what_is_due_before_the_plant_date() =>
        Assert.Equal(["K-1"], await NamesAsync(new ChainFilter { DueBefore = new DateOnly(2027, 2, 1) }));

    [Theory]
    [InlineData("press", "K-1 K-3")]
    [InlineData("press out", "K-3")]
    [InlineData("bl634", "K-3")]
    [InlineData("50%", "K-2")]
    [InlineData("%", "K-2")]
    [InlineData("_", "")]
    public async Task The_search_finds_every_word_in_name_line_position_or_type(string search, string names) =>
        Assert.Equal(
            names.Split(' ', StringSplitOptions.RemoveEmptyEntries), await NamesAsync(new ChainFilter { Search = search }));

    [Fact]
    public async Task Line_and_family_narrow_the_list()
    {
        Assert.Equal(["K-1", "K-3"], await NamesAsync(new ChainFilter { Line = "Press" }));
        Assert.Equal(["K-3"], await NamesAsync(new ChainFilter { Family = ChainFamily.Named("leaf") }));
    }

    // K-3 is a leaf chain: it lifts by its kind, whatever its card says.
    [Fact]
    public async Task Chains_that_lift_are_found_apart_and_in_words_of_their_own()
    {
        Assert.Equal(["K-3"], await NamesAsync(new ChainFilter { Lifts = true }));
        Assert.Equal(["K-1", "K-2"], await NamesAsync(new ChainFilter { Lifts = false }));
        Assert.Equal(["K-3"], await NamesAsync(ChainFilter.FromQuery("?condition=cannot-be-judged")));
        Assert.Equal(["K-3"], await NamesAsync(ChainFilter.FromQuery("?condition=not-known")));
        Assert.Empty(await NamesAsync(ChainFilter.FromQuery("?condition=not-known&lifts=no")));
        var page = await plant.Host.Get<ChainListQuery>()
            .AskAsync(new ChainFilter { Lifts = true }, 0, 10, TestContext.Current.CancellationToken);
        Assert.Equal("cannot be judged", Assert.Single(page.Rows).Condition.Words.ToString());
    }

    public static TheoryData<ChainSort> Sorts => [.. Enum.GetValues<ChainSort>()];

    [Theory]
    [MemberData(nameof(Sorts))]
    public async Task Every_sort_works_both_ways_and_loses_no_chain(ChainSort sort)
    {
        foreach (var descending in new[] { false, true })
            Assert.Equal(3, (await NamesAsync(new ChainFilter { Sort = sort, Descending = descending })).Count);
    }

    [Fact]
    public async Task Sorting_by_elongation_from_the_top_keeps_the_unmeasured_last() =>
        Assert.Equal(["K-1", "K-2", "K-3"], await NamesAsync(new ChainFilter { Sort = ChainSort.Elongation, Descending = true }));

    [Fact]
    public async Task A_stretch_comes_with_the_total()
    {
        var page = await plant.Host.Get<ChainListQuery>()
            .AskAsync(new ChainFilter(), skip: 1, take: 1, TestContext.Current.CancellationToken);
        Assert.Equal(("K-2", 3), (page.Rows.Single().Name, page.Total));
    }

    private async Task<IReadOnlyList<string>> NamesAsync(ChainFilter filter)
    {
        var page = await plant.Host.Get<ChainListQuery>().AskAsync(filter, 0, 100, TestContext.Current.CancellationToken);
        return [.. page.Rows.Select(r => r.Name)];
    }
}
