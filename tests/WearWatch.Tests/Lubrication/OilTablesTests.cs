using System.Globalization;
using CsCheck;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lubrication;
using WearWatch.Tests.Chains;
using WearWatch.Units;

namespace WearWatch.Tests.Lubrication;

public sealed class OilTablesTests
{
    // Source: docs/references.md [12], tests/data/trade/lubrication_speed_limits.csv; rows marked there as from memory are marked
    // in ours.
    [Fact]
    public void Speed_limits_of_oiling_are_those_of_the_table() =>
        Assert.All(TradeTable.Read("lubrication_speed_limits.csv"), row =>
    {
        var type = ChainCatalogue.Find(row["chain_no"])!;
        var manual = double.Parse(row["type_A_max_ft_min"], CultureInfo.InvariantCulture);
        var bath = double.Parse(row["type_B_max_ft_min"], CultureInfo.InvariantCulture);

        Assert.Equal(OilFeedKind.ManualOrDrip, OilFeed.For(type, Speed.FromFeetPerMinute(manual)).Kind);
        Assert.Equal(OilFeedKind.BathOrDisc, OilFeed.For(type, Speed.FromFeetPerMinute(manual + 1)).Kind);
        Assert.Equal(OilFeedKind.BathOrDisc, OilFeed.For(type, Speed.FromFeetPerMinute(bath)).Kind);
        Assert.Equal(OilFeedKind.OilStream, OilFeed.For(type, Speed.FromFeetPerMinute(bath + 1)).Kind);
        Assert.Equal(row["status"] == "confirmed", OilFeed.For(type, new Speed(1)).IsVerified);
    });

    // From memory of ISO 10823: borders 7.0 p^-0.56 and 35 p^-0.56; at 12.7 mm 1.69 and 8.4 m/s.
    [Fact]
    public void Pitches_outside_of_the_table_go_by_the_power_law_and_are_marked_as_from_memory()
    {
        var feed = OilFeed.For(pitchMm: 12.8, new Speed(2));

        Assert.Equal(OilFeedKind.BathOrDisc, feed.Kind);
        Assert.Equal(1.68, feed.ManualUpTo.MetresPerSecond, 0.01);
        Assert.False(feed.IsVerified);
    }

    [Fact]
    public void Hand_oiling_is_too_little_for_a_fast_chain()
    {
        var fast = OilFeed.For(25.4, new Speed(3));

        Assert.False(fast.IsEnough(LubricationState.Manual));
        Assert.True(fast.IsEnough(LubricationState.Auto));
        Assert.True(OilFeed.For(25.4, new Speed(0.5)).IsEnough(LubricationState.Manual));
        Assert.Contains("bath", fast.Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_faster_chain_never_needs_less() =>
        Gen.Select(Gen.Double[6, 120], Gen.Double[0.01, 20], Gen.Double[0, 5]).Sample((pitchMm, slow, more) =>
            OilFeed.For(pitchMm, new Speed(slow + more)).Kind >= OilFeed.For(pitchMm, new Speed(slow)).Kind);

    // Source: docs/references.md [13], rows R of tests/data/trade/lubrication_viscosity.csv, in the middle of each band.
    [Fact]
    public void Oil_grades_are_those_of_the_table() => Assert.All(Bands("R"), band =>
    {
        var grade = OilGrade.For(new Temperature(band.Middle))!;
        Assert.Equal(("SAE " + band.Row["sae"], band.Row["iso_vg"], ""), (grade.Sae, grade.IsoVg, grade.Remark.ToString()));
    });

    // Source: docs/references.md [49], rows U.
    [Fact]
    public void Conveyor_chain_has_a_table_of_its_own() => Assert.All(Bands("U"), band =>
        Assert.Equal("SAE " + band.Row["sae"], ChainFamily.Named("conveyor").OilFor(new Temperature(band.Middle))!.Sae));

    // Source: docs/references.md [11], rows T; the doubtful last one is left out.
    [Fact]
    public void Another_maker_goes_by_size() => Assert.All(Bands("T").Where(b => b.Row["status"] == "confirmed"), band =>
    {
        var pitchMm = band.Row["chain_size"].Contains("smaller", StringComparison.Ordinal) ? 12.7 : 50.8;
        Assert.Equal("SAE " + band.Row["sae"], OilGrade.BySize(pitchMm, new Temperature(band.Middle))!.Sae);
    });

    [Fact]
    public void At_the_edge_of_two_bands_the_thinner_oil_is_given_and_said_so()
    {
        var edge = OilGrade.For(new Temperature(40))!;

        Assert.Equal("SAE 30", edge.Sae);
        Assert.Contains("edge", edge.Remark.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-6)]
    [InlineData(61)]
    public void Outside_of_the_table_nothing_is_invented(double celsius) => Assert.Null(OilGrade.For(new Temperature(celsius)));

    [Fact]
    public void Between_small_and_large_chains_that_maker_says_nothing() =>
        Assert.Null(OilGrade.BySize(25.4, new Temperature(20)));

    private static IEnumerable<(IReadOnlyDictionary<string, string> Row, double Middle)> Bands(string table) =>
        TradeTable.Read("lubrication_viscosity.csv").Where(row => row["table"] == table).Select(row => (row,
            (double.Parse(row["t_min_c"], CultureInfo.InvariantCulture) + double.Parse(row["t_max_c"],
                CultureInfo.InvariantCulture)) / 2));
}
