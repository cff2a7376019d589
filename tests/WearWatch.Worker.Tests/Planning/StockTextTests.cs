using WearWatch.Planning.Supply;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>A list of the store as people paste it.</summary>
public sealed class StockTextTests
{
    private static readonly Spare Known = new()
    {
        Part = new Part(PartKind.Chain, "16B-1"),
        InStock = 10,
        PackSize = 160,
        Price = 3,
        LeadTime = TimeSpan.FromDays(28),
    };

    [Theory]
    [InlineData("chain_type\tin_stock\tprice\n16B-1\t120\t2,85")]
    [InlineData("chain_type;in_stock;price\n16B-1;120;2,85")]
    [InlineData("chain_type,in_stock,price\n16B-1,120,2.85")]
    public void What_a_row_says_is_taken_and_what_it_leaves_out_stays(string text)
    {
        var (spares, faults) = StockText.Read(text, [Known]);
        Assert.Empty(faults);
        var spare = Assert.Single(spares);
        Assert.Equal((120, 160, 2.85, 28.0), (spare.InStock, spare.PackSize, spare.Price, spare.LeadTime.TotalDays));
    }

    [Fact]
    public void Other_parts_are_named_by_their_kind()
    {
        var (spares, _) = StockText.Read(
            "part;chain_type;in_stock;pack\nsprocket;16B-1 z17;2;1\nconnecting_link;16B-1;12;10", []);
        Assert.Equal([Part.SprocketFor("16B-1", 17), new Part(PartKind.ConnectingLink, "16B-1")], spares.Select(s => s.Part));
    }

    [Theory]
    [InlineData("", "header")]
    [InlineData("type;stock\n16B-1;5", "chain_type and in_stock")]
    [InlineData("chain_type;in_stock\n16B-1;many", "Line 2: in_stock")]
    [InlineData("chain_type;in_stock\n;5", "Line 2: chain_type")]
    [InlineData("part;chain_type;in_stock\nbelt;16B-1;5", "Line 2: part")]
    public void What_cannot_be_read_is_named_with_its_line(string text, string fault)
    {
        var (spares, faults) = StockText.Read(text, []);
        Assert.Empty(spares);
        Assert.Contains(faults, f => f.ToString().Contains(fault, StringComparison.Ordinal));
    }
}
