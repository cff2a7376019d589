using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Tests.Chains;

/// <summary>
/// Oracle: geometry by hand, 100 (2 s/p + n)/(X - n) percent; a take-up for two pitches, docs/references.md [38].
/// </summary>
public sealed class TakeUpEndTests
{
    private static LimitCase Drive { get; } = new() { ChainPitches = 120, PitchMm = 25.4, TakeUpTravelMm = 25.4 };

    [Fact]
    public void A_chain_that_is_not_worn_is_shortened_and_not_replaced()
    {
        var end = TakeUpEnd.Of(Drive, 3)!;

        Assert.Equal((TakeUpTask.Shorten, 2), (end.Task, end.PitchesToRemove));
        Assert.Equal("Take out 2 pitches and set the take-up back.", end.Why.ToString());
    }

    // 25 mm of travel are 1.97 pitches of slack: a fitter takes two out.
    [Fact]
    public void A_travel_of_a_hair_below_a_pitch_is_enough_and_half_a_pitch_is_not()
    {
        Assert.Equal(TakeUpTask.Shorten, TakeUpEnd.Of(Drive with { TakeUpTravelMm = 25 }, 3)!.Task);
        Assert.Equal(TakeUpTask.Replace, TakeUpEnd.Of(Drive with { TakeUpTravelMm = 12.7 }, 3)!.Task);
    }

    // Two pitches out: 100 (2 + 2)/118 = 3.39 %. Against 4 % that is 85 % of the wear; against 3 % wear comes first.
    [Fact]
    public void A_chain_that_is_nearly_worn_out_is_not_shortened()
    {
        Assert.Null(TakeUpEnd.Of(Drive with { PitchesOut = 2 }, 3));
        Assert.Equal(TakeUpTask.Replace, TakeUpEnd.Of(Drive with { PitchesOut = 2 }, 4)!.Task);
        Assert.Equal(TakeUpTask.Shorten, TakeUpEnd.Of(Drive with { PitchesOut = 2 }, 5)!.Task);
    }

    [Fact]
    public void What_must_not_be_shortened_is_replaced_at_the_end_of_its_take_up()
    {
        foreach (var family in ChainFamily.All)
        {
            var lifting = LimitRules.For(Drive with { Family = family, Lifts = true, TakeUpTravelMm = 5 });
            Assert.Equal(LimitReason.TakeUpTravel, lifting.Governing.Reason);
            Assert.Equal(TakeUpTask.Replace, lifting.TakeUp!.Task);
            Assert.Equal(0, lifting.TakeUp.PitchesToRemove);
        }
    }

    // 120 pitches at 1 % stand 0.6 pitches = 15.24 mm out. A shaft at 20.24 mm has 5 mm less: 100 x 2 x 20.4/(120 x 25.4).
    [Fact]
    public void A_take_up_that_stands_farther_out_than_the_elongation_explains_ends_sooner()
    {
        var ahead = TakeUpEnd.AheadMm(Drive, 20.24, 1);

        Assert.Equal(5, ahead, 1e-9);
        Assert.Equal(1.339, TakeUpEnd.Of(Drive with { TakeUpAheadMm = ahead }, 3)!.Percent, 3);
        Assert.Equal(0, TakeUpEnd.AheadMm(Drive, 10, 1));
    }

    [Fact]
    public void The_plants_own_limit_is_what_wear_is_held_against()
    {
        var card = new ChainCard { Name = "K", PitchMm = 25.4, Pitches = 120, TakeUpTravelMm = 25.4, LimitPercent = 1.5 };

        Assert.Null(LimitRules.For(card).TakeUp);
        Assert.Equal(TakeUpTask.Shorten, LimitRules.For(card with { LimitPercent = 2.5 }).TakeUp!.Task);
    }
}
