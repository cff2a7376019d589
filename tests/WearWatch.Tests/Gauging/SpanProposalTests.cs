using CsCheck;
using WearWatch.Chains.Families;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class SpanProposalTests
{
    [Fact]
    public void A_proposal_is_even_and_good_enough_and_two_pitches_fewer_would_not_be() =>
        Gen.Select(Gen.Double[6, 130], Gen.Double[0.8, 3]).Sample((pitchMm, limitPercent) =>
        {
            var span = Span(pitchMm);
            var proposal = SpanProposal.For(span, limitPercent);
            return proposal.GoodEnough && int.IsEvenInteger(proposal.Pitches)
                && proposal.StandardUncertaintyPercent < limitPercent / 10
                && (proposal.Pitches == 4 || Uncertainty(span, proposal.Pitches - 2) >= limitPercent / 10);
        });

    [Fact]
    public void A_limit_that_the_makers_tolerance_hides_wants_the_length_when_new()
    {
        var proposal = SpanProposal.For(Span(12.7), limitPercent: 0.4);

        Assert.False(proposal.GoodEnough);
        Assert.Contains("when new", proposal.Advice, StringComparison.Ordinal);
        Assert.True(
            SpanProposal.For(Span(12.7) with { New = new NewLength(1, new Instrument.Tape(), SameTool: true) },
            limitPercent: 0.4).GoodEnough);
    }

    [Fact]
    public void No_more_pitches_are_proposed_than_the_chain_has() =>
        Assert.Equal(20, SpanProposal.For(Span(9.525), limitPercent: 0.5, chainPitches: 21).Pitches);

    [Fact]
    public void Link_chain_is_measured_over_eleven_links() =>
        Assert.Equal(11, SpanProposal.For(Span(28) with { Family = ChainFamily.Named("round_link") }, limitPercent: 2).Pitches);

    private static MeasuredSpan Span(double pitchMm) => new() { PitchMm = pitchMm, Pitches = 2, LengthsMm = [2 * pitchMm] };

    private static double Uncertainty(MeasuredSpan span, int pitches) =>
        UncertaintyBudget.Of(span with { Pitches = pitches, LengthsMm = [pitches * span.PitchMm] }).StandardUncertaintyPercent;
}
