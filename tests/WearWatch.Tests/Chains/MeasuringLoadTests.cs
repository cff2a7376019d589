using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Units;

namespace WearWatch.Tests.Chains;

public sealed class MeasuringLoadTests
{
    // Source: docs/references.md [5]: the measuring load of the table is 1 % of the strength; No. 240 alone is printed as
    // 1,000 lbf
    // where 1 % would be 1,125, and chains below No. 40 have the least load of 18 lbf.
    [Fact]
    public void The_listed_loads_are_one_percent_of_the_strength() => Assert.All(
        ChainCatalogue.All.Where(t =>
            t is { Standard: "ASME B29.1", Strands: 1 } && !t.Designation.StartsWith("240", StringComparison.Ordinal)),
        type =>
        {
            var listed = new Force(type.MeasuringForceNewtons!.Value.Value).Pounds;
            var onePercent = new Force(10 * type.TensileKilonewtons!.Value.Value).Pounds;
            Assert.Equal(Math.Max(18, onePercent), listed, 1.0);
        });

    [Fact]
    public void Where_none_is_listed_one_percent_of_the_strength_serves_and_says_so()
    {
        var leaf = MeasuringLoad.For(ChainCatalogue.Find("BL844")!)!.Value;

        Assert.Equal(10 * ChainCatalogue.Find("BL844")!.TensileKilonewtons!.Value.Value, leaf.Value, 1e-9);
        Assert.StartsWith("1 %", leaf.Source, StringComparison.Ordinal);
        Assert.True(leaf.IsVerified);
    }

    [Fact]
    public void A_force_from_memory_stays_marked() =>
        Assert.False(MeasuringLoad.For(ChainCatalogue.Find("16B-1")!)!.Value.IsVerified);

    [Fact]
    public void Without_a_strength_the_chain_is_measured_in_place()
    {
        var custom = ChainType.Custom("our own", ChainFamily.Named("custom"), 33);

        Assert.Null(MeasuringLoad.For(custom));
        Assert.StartsWith("Measure in place", MeasuringLoad.Advice(custom).ToString(), StringComparison.Ordinal);
        Assert.Contains("556 N", MeasuringLoad.Advice(ChainCatalogue.Find("80")!).ToString(), StringComparison.Ordinal);
    }
}
