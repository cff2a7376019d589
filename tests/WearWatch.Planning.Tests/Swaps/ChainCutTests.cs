using WearWatch.Chains;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Swaps;

public sealed class ChainCutTests
{
    // Oracle: the links themselves. Inner and outer links alternate round a closed chain, so a cut between two inner links is odd.
    [Fact]
    public void Cut_and_closing_links_add_up_to_the_chain_and_alternate_round_it()
    {
        foreach (var pitches in Enumerable.Range(3, 400))
        {
            var cut = ChainCut.For(ChainFamily.Roller, pitches);
            Assert.Equal(pitches, cut.CutPitches + cut.ConnectingLinks + cut.OffsetLinks);
            Assert.Equal(1, cut.CutPitches % 2);
            Assert.Equal(pitches % 2, cut.OffsetLinks);
        }
    }

    [Fact]
    public void Links_that_are_all_alike_need_no_offset_link() =>
        Assert.Equal(new ChainCut(81, 0, 0), ChainCut.For(ChainFamily.OffsetLink, 81));

    [Fact]
    public void An_odd_chain_takes_chain_a_connecting_link_and_an_offset_link_from_the_shelf() =>
        Assert.Equal(
            [new(new(PartKind.Chain, "16B-1"), 79), new(new(PartKind.ConnectingLink, "16B-1"), 1), new(new(PartKind.OffsetLink, "16B-1"), 1)],
            ChainCut.For(ChainFamily.Roller, 81).Needs("16B-1"));
}
