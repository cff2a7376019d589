using System.Globalization;
using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim.Tests.Plant;

public sealed class DesignationTests
{
    private static readonly Dictionary<string, string[]> Table =
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "TradeTables", "designations.csv"))
            .Skip(1).Select(line => line.Split(',')).ToDictionary(cells => cells[0]);

    public static TheoryData<string> Designations { get; } =
        [.. Sizes.Where(s => s.Family != MillFamily.RoundLink).Select(s => s.Designation).Distinct()];

    private static IEnumerable<ChainSize> Sizes => Mill.Lines.SelectMany(l => l.Positions).Select(p => p.Size);

    // Oracle: the trade tables, see TradeTables/SOURCES.md.
    [Theory]
    [MemberData(nameof(Designations))]
    public void Every_designation_stands_in_the_trade_tables_with_this_pitch(string designation)
    {
        var row = Table[designation.Split('-', 'x')[0]];
        foreach (var size in Sizes.Where(s => s.Designation == designation))
        {
            if (row[1] != "") Assert.Equal(Number(row[1]), size.PitchMm, 0.005);
            else Assert.InRange(size.PitchMm, Number(row[2]), Number(row[3]));
        }
    }

    [Fact]
    public void A_round_link_chain_is_named_by_its_wire_and_pitch()
    {
        foreach (var size in Sizes.Where(s => s.Family == MillFamily.RoundLink))
            Assert.Equal(size.PitchMm, Number(size.Designation.Split('x')[1]));
    }

    [Fact]
    public void All_kinds_of_chain_run_in_the_mill() =>
        Assert.Equal(Enum.GetValues<MillFamily>(), Sizes.Select(s => s.Family).Distinct().Order());

    [Fact]
    public void Five_lines_have_eighty_positions_with_names_of_their_own()
    {
        var positions = Mill.Lines.SelectMany(l => l.Positions).ToList();

        Assert.Equal(5, Mill.Lines.Count);
        Assert.Equal(80, positions.Select(p => p.ChainName).Distinct().Count());
        Assert.Equal(80, positions.Select(p => p.Label).Distinct().Count());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
