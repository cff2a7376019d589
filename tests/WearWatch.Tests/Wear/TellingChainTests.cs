using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class TellingChainTests
{
    private static readonly Reading[] Worn = A.Readings(0.5, 500, 2000, 4000, 5700);

    [Fact]
    public void A_chain_read_at_its_limit_tells() => Assert.Single(Of(Worn));

    [Fact]
    public void A_chain_that_runs_tells_what_it_has_shown_so_far() => Assert.Single(Of(Worn[..3]));

    [Fact]
    public void A_chain_that_was_replaced_tells_though_it_was_early() =>
        Assert.Single(Of([.. Worn[..3], A.Reading(4600, 0.2)], 4100));

    [Fact]
    public void A_chain_whose_fitting_nobody_knows_teaches_nothing() =>
        Assert.Empty(TellingChain.Of(
            ChainHistory.Take(A.Card(fittedCounter: null), Worn, []), _ => WearPrior.Broad));

    [Fact]
    public void Two_readings_teach_nothing() => Assert.Empty(Of(Worn[2..]));

    private static IEnumerable<TellingChain> Of(Reading[] readings, double? replacedAt = null) => TellingChain.Of(
        ChainHistory.Take(A.Card(), readings, replacedAt is { } at ? [A.Replacement(at)] : []), _ => WearPrior.Broad);
}
