using CsCheck;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

/// <summary>
/// Oracle: the spans of docs/references.md [7], [10], [27], and the uncertainty budget, which has its own tests.
/// </summary>
public sealed class SpanProposalTests
{
    // [10]: 20 to 40 pitches; [7]: 610 mm up to 12B, 1,220 mm from 16B on; [27]: at least 4 links of a conveyor chain.
    [Theory]
    [InlineData("roller", 12.7, 3, 40)]
    [InlineData("roller", 19.05, 3, 34)]
    [InlineData("roller", 25.4, 3, 40)]
    [InlineData("roller", 38.1, 3, 34)]
    [InlineData("roller", 76.2, 3, 20)]
    [InlineData("conveyor", 100, 3, 14)]
    [InlineData("conveyor", 250, 3, 6)]
    [InlineData("leaf", 25.4, 3, 40)]
    public void The_usual_span_is_that_of_the_trade(string family, double pitchMm, double limitPercent, int pitches)
    {
        var proposal = SpanProposal.For(Case(pitchMm, limitPercent, family));

        Assert.Equal(pitches, proposal.Pitches);
        Assert.True(proposal.GoodEnough, proposal.Advice.ToString());
        Assert.True(proposal.WhyNot.IsEmpty);
    }

    [Fact]
    public void A_proposal_is_even_and_good_enough_or_says_why_not() =>
        Gen.Select(Gen.Double[6, 130], Gen.Double[0.8, 3], Gen.Int[10, 200]).Sample((pitchMm, limitPercent, chainPitches) =>
        {
            var proposal = SpanProposal.For(Case(pitchMm, limitPercent) with { ChainPitches = chainPitches });
            return int.IsEvenInteger(proposal.Pitches) && proposal.Pitches <= chainPitches / 2
                && proposal.GoodEnough == proposal.ExpandedUncertaintyPercent < limitPercent / 10
                && proposal.GoodEnough == proposal.WhyNot.IsEmpty;
        });

    [Fact]
    public void A_limit_that_the_makers_tolerance_hides_wants_the_length_when_new()
    {
        var proposal = SpanProposal.For(Case(12.7, 0.7));

        Assert.False(proposal.GoodEnough);
        Assert.Contains("when new", proposal.WhyNot.ToString(), StringComparison.Ordinal);
        var withNew = Case(12.7, 0.7);
        Assert.True(SpanProposal.For(withNew with
        {
            Span = withNew.Span with { New = new NewLength(1, new Instrument.Tape(), SameTool: true) },
        }).GoodEnough);
    }

    // A loop over two wheels has at most half of its pitches in one straight span, and none is longer than the centres.
    [Theory]
    [InlineData(42, null, 20)]
    [InlineData(120, 300.0, 30)]
    [InlineData(null, 300.0, 30)]
    public void No_more_pitches_are_proposed_than_can_be_reached(int? chainPitches, double? centreDistanceMm, int pitches)
    {
        var proposal = SpanProposal.For(
            Case(9.525, 1.5) with { ChainPitches = chainPitches, CentreDistanceMm = centreDistanceMm });

        Assert.Equal(pitches, proposal.Pitches);
        Assert.Contains("can be reached", proposal.WhyNot.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void All_of_a_chain_that_hangs_can_be_measured() => Assert.Equal(
        38, SpanProposal.For(Case(15.875, 2, "leaf") with { ChainPitches = 39, HoldsLoad = true }).Pitches);

    [Fact]
    public void The_same_span_and_place_as_last_time_come_first_where_they_are_enough()
    {
        var proposal = SpanProposal.For(Case(19.05, 3) with { LastPitches = 48, LastPlace = "red mark" });

        Assert.Equal(48, proposal.Pitches);
        Assert.Equal("Measure the same 48 pitches as last time, at red mark", proposal.What.ToString());
        Assert.Equal(34, SpanProposal.For(Case(19.05, 3) with { LastPitches = 6 }).Pitches);
        Assert.Equal(34, SpanProposal.For(Case(19.05, 3) with { LastPitches = 35 }).Pitches);
    }

    [Fact]
    public void Near_the_limit_more_is_measured()
    {
        var proposal = SpanProposal.For(Case(38.1, 3) with { LastPitches = 34, ElongationPercent = 2.5 });

        Assert.Equal(40, proposal.Pitches);
        Assert.StartsWith("Near the limit", proposal.What.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Link_chain_is_measured_over_eleven_links() =>
        Assert.Equal(11, SpanProposal.For(Case(28, 2, "round_link")).Pitches);

    private static SpanCase Case(double pitchMm, double limitPercent, string family = "roller") => new()
    {
        Span = new MeasuredSpan
        {
            PitchMm = pitchMm,
            Pitches = 2,
            LengthsMm = [2 * pitchMm],
            Family = ChainFamily.Named(family),
        },
        Limit = new ReplacementLimit(limitPercent, LimitReason.SetByPlant, "the test"),
    };
}
