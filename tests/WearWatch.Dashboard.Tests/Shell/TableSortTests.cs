using WearWatch.Dashboard.Kit.Tables;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>The order of a table stands in the address.</summary>
public sealed class TableSortTests
{
    private static readonly Dictionary<string, Func<(string Name, double? Figure), IComparable?>> Columns = new()
    {
        ["name"] = r => r.Name,
        ["figure"] = r => r.Figure,
    };

    private static readonly (string, double?)[] Rows = [("b", 2), ("c", null), ("a", double.NaN), ("d", 1)];

    [Theory]
    [InlineData("", "bcad")]
    [InlineData("?sort-fleet=name", "abcd")]
    [InlineData("?sort-fleet=-name", "dcba")]
    [InlineData("?sort-fleet=figure", "dbca")]
    [InlineData("?sort-fleet=-figure", "bdca")]
    [InlineData("?sort-other=name&sort-fleet=colour", "bcad")]
    public void Rows_stand_as_the_address_says_and_what_has_no_figure_last(string query, string order) =>
        Assert.Equal(order, string.Concat(TableSort.Of(query, "fleet").Order(
            Rows, Columns.GetValueOrDefault(TableSort.Of(query, "fleet").Column)).Select(r => r.Item1)));

    [Fact]
    public void A_second_click_turns_it_round_and_leaves_the_rest_of_the_address()
    {
        var once = TableSort.Of("?by=line&sort-slow=rate", "fast").By("name");
        Assert.Equal("?by=line&sort-slow=rate&sort-fast=name", once.In("?by=line&sort-slow=rate"));
        var twice = TableSort.Of("?sort-fast=name", "fast").By("name");
        Assert.Equal("?sort-fast=-name", twice.In("?sort-fast=name"));
        Assert.Equal(once, twice.By("name"));
    }

    [Theory]
    [InlineData("?by=type", "?by=type&sort-fast=-name", true)]
    [InlineData("?by=type&sort-slow=rate", "?by=type&sort-fast=-name", true)]
    [InlineData("?by=type", "?by=line&sort-fast=-name", false)]
    public void An_order_alone_asks_for_nothing_new(string query, string other, bool alone) =>
        Assert.Equal(alone, TableAddress.IsAllThatDiffers(query, other));

    [Fact]
    public void A_new_filter_leaves_the_tables_as_they_are_sorted() =>
        Assert.Equal("?by=type&sort-fast=-name", TableAddress.Keep("?by=line&sort-fast=-name", "?by=type"));
}
