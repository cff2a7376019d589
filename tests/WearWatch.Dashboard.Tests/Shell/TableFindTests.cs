using WearWatch.Dashboard.Kit.Tables;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>What a table is narrowed to stands in the address.</summary>
public sealed class TableFindTests
{
    private static readonly ListColumn<(string Chain, int State, double Hours)>[] Columns =
    [
        new("chain", "Chain", r => r.Chain),
        new("state", "State", r => r.State) { Words = r => r.State == 0 ? "overdue" : "sound" },
        new("hours", "Hours", r => r.Hours),
    ];

    private static readonly (string, int, double)[] Rows = [("Séchoir 1", 0, 17), ("Dryer 2", 1, 18), ("Dryer 3", 0, 1)];

    [Theory]
    [InlineData("", 3)]
    [InlineData("?find-other=zz", 3)]
    [InlineData("?find-fleet=dryer", 2)]
    [InlineData("?find-fleet=SÉCHOIR", 1)]
    [InlineData("?find-fleet=over+dry", 1)]
    [InlineData("?find-fleet=18", 0)]
    [InlineData("?find-fleet=%20%20", 3)]
    public void Rows_hold_every_word_in_some_column_whatever_case(string query, int found) =>
        Assert.Equal(found, TableFind.Of(query, "fleet").In(Rows, Columns).Count);

    [Fact]
    public void A_search_asks_for_nothing_new_and_leaves_the_rest_of_the_address()
    {
        var query = TableFind.Of("?by=line&sort-fleet=name", "fleet") with { Text = "a b" };
        Assert.Equal("?by=line&sort-fleet=name&find-fleet=a%20b", query.In("?by=line&sort-fleet=name"));
        Assert.True(TableAddress.IsAllThatDiffers("?by=line", query.In("?by=line")));
        Assert.Equal("?by=line", (query with { Text = "" }).In("?by=line&find-fleet=a%20b"));
    }

    [Fact]
    public void What_a_glance_takes_is_not_searched_nor_are_figures_alone()
    {
        var many = Enumerable.Range(0, TableFind.Glance + 1).Select(i => ("chain", i, 1.0)).ToArray();
        var all = new TableFind("fleet");
        Assert.False(all.Serves(Rows, Columns));
        Assert.True(all.Serves(many, Columns));
        Assert.False(all.Serves(many, [.. Columns.TakeLast(1)]));
        Assert.True((all with { Text = "x" }).Serves(Rows, Columns));
    }
}
