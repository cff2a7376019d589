using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Tests.Chains;

public sealed class CautionTests
{
    [Fact]
    public void Every_kind_of_chain_is_touched_only_when_locked_out() => Assert.All(ChainFamily.All, family =>
    {
        Assert.Contains(Caution.BeforeTouching, Caution.For(family, holdsLoad: false));
        Assert.Equal(Caution.WhoDecides, Caution.For(family, holdsLoad: false)[^1]);
    });

    // Sources: docs/references.md [30], [46]: elongation alone never passes a lifting chain.
    [Fact]
    public void A_chain_that_lifts_is_never_passed_by_a_figure_alone()
    {
        Assert.Equal(Caution.Lifting, Caution.For(ChainFamily.Named("leaf"), holdsLoad: false)[0]);
        Assert.Equal(Caution.Lifting, Caution.For(new ChainCard { Name = "K1", PitchMm = 25.4, Lifts = true })[0]);
        Assert.DoesNotContain(Caution.Lifting, Caution.For(ChainFamily.Usual, holdsLoad: false));
    }
}
