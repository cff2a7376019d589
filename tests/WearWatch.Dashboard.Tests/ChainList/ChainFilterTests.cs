using WearWatch.Chains.Families;
using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.ChainList;

public sealed class ChainFilterTests
{
    [Fact]
    public void A_filter_survives_its_address()
    {
        var filter = new ChainFilter
        {
            Search = "drum & 50%",
            Line = "Press 2",
            Condition = Condition.PlanASwap,
            Family = ChainFamily.Named("double_pitch"),
            DueBefore = new DateOnly(2027, 1, 4),
            Sort = ChainSort.LastReading,
            Descending = true,
        };
        Assert.Equal(filter, ChainFilter.FromQuery(filter.ToQuery()));
    }

    [Theory]
    [InlineData("?condition=take-out-of-use", "/chains?condition=take-out-of-use")]
    [InlineData("?condition=swap_now&lifts=no", "/chains?condition=swap-now&lifts=no")]
    [InlineData("?condition=swap-now&lifts=yes", "/chains?condition=take-out-of-use")]
    [InlineData("?lifts=yes", "/chains?lifts=yes")]
    public void The_word_of_a_chain_that_lifts_asks_for_such_chains_alone(string query, string address) =>
        Assert.Equal(address, ChainFilter.FromQuery(query).ToAddress());

    [Fact]
    public void Nothing_asked_is_the_bare_address() => Assert.Equal("/chains", new ChainFilter().ToAddress());

    [Theory]
    [InlineData("?condition=purple&family=9&sort=3&due=tomorrow&descending=1")]
    [InlineData("?condition=&family=&sort=&due=31.12.2026")]
    public void What_cannot_be_read_is_left_out(string query) => Assert.Equal(new ChainFilter(), ChainFilter.FromQuery(query));

    [Fact]
    public void A_line_without_name_can_be_asked_for() =>
        Assert.Equal("", ChainFilter.FromQuery("?line=").Line);

    [Fact]
    public void Only_what_leaves_chains_out_narrows()
    {
        Assert.False(new ChainFilter { Sort = ChainSort.Rate, Descending = true }.IsNarrowed);
        Assert.True(new ChainFilter { Search = "x" }.IsNarrowed);
    }
}
