using WearWatch.Chains.Families;
using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Tests.Swaps;

public sealed class ChainCutTests
{
    // Oracle: the links themselves. Inner and outer links alternate round a closed chain, so a cut between two inner links is
    // odd.
    [Fact]
    public void Cut_and_closing_links_add_up_to_the_chain_and_alternate_round_it()
    {
        foreach (var pitches in Enumerable.Range(3, 400))
        {
            var cut = ChainFamily.Usual.Cut(pitches);
            Assert.Equal(pitches, cut.CutPitches + cut.ConnectingLinks + cut.OffsetLinks);
            Assert.Equal(1, cut.CutPitches % 2);
            Assert.Equal(pitches % 2, cut.OffsetLinks);
        }
    }

    [Fact]
    public void Links_that_are_all_alike_need_no_offset_link() =>
        Assert.Equal(new ChainCut(81, 0, 0), ChainFamily.Named("offset_link").Cut(81));

    [Fact]
    public void An_odd_chain_takes_chain_a_connecting_link_and_an_offset_link_from_the_shelf() =>
        Assert.Equal(
            [new(new(PartKind.Chain, "16B-1"), 79), new(new(PartKind.ConnectingLink, "16B-1"), 1),
                new(new(PartKind.OffsetLink, "16B-1"), 1)],
            PartNeed.Of(ChainFamily.Usual.Cut(81), "16B-1"));
}
