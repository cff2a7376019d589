using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

/// <summary>What counts as a failure is this plant's own definition; the tests state it.</summary>
public sealed class LifeTests
{
    [Fact]
    public void A_chain_that_passed_its_limit_lasted_until_it_did() => Assert.Equal(
        new Life(5000, LifeEnd.ReachedLimit), Life.Of(A.FittedChain(true, 6500, (4000, 2.5), (6000, 3.5), (6500, 3.7)), 3));

    [Fact]
    public void A_chain_that_still_runs_past_its_limit_did_not_last_longer_for_it() => Assert.Equal(
        new Life(5000, LifeEnd.ReachedLimit), Life.Of(A.FittedChain(false, 6500, (4000, 2.5), (6000, 3.5), (6500, 3.7)), 3));

    [Fact]
    public void A_chain_taken_off_early_did_not_fail() => Assert.Equal(
        new Life(5500, LifeEnd.ReplacedBefore), Life.Of(A.FittedChain(true, 5500, (4000, 2.0), (5000, 2.6)), 3));

    [Fact]
    public void A_chain_that_runs_below_its_limit_is_suspended() => Assert.Equal(
        new Life(5000, LifeEnd.StillRunning), Life.Of(A.FittedChain(false, 5000, (4000, 2.0), (5000, 2.6)), 3));

    [Fact]
    public void A_lone_high_reading_that_the_next_one_denies_is_a_slip() => Assert.Equal(
        new Life(5000, LifeEnd.StillRunning), Life.Of(A.FittedChain(false, 5000, (3000, 1.5), (4000, 3.4), (5000, 2.4)), 3));

    [Fact]
    public void The_first_reading_over_the_limit_waits_for_another_while_the_chain_runs()
    {
        Assert.Equal(LifeEnd.StillRunning, Life.Of(A.FittedChain(false, 6000, (4000, 2.5), (6000, 3.5)), 3)?.End);
        Assert.Equal(LifeEnd.ReachedLimit, Life.Of(A.FittedChain(true, 6000, (4000, 2.5), (6000, 3.5)), 3)?.End);
    }

    [Fact]
    public void A_slip_before_the_limit_does_not_shift_where_it_was_reached() => Assert.Equal(
        new Life(5000, LifeEnd.ReachedLimit),
        Life.Of(A.FittedChain(true, 7000, (2000, 3.9), (4000, 2.5), (6000, 3.5), (7000, 4.0)), 3));

    [Fact]
    public void A_limit_passed_before_the_first_reading_is_reckoned_from_fitting() => Assert.Equal(
        new Life(3000, LifeEnd.ReachedLimit), Life.Of(A.FittedChain(true, 4000, (4000, 4.0)), 3));

    [Fact]
    public void Two_readings_at_the_same_hours_on_both_sides_of_the_limit_are_no_trouble() => Assert.Equal(
        new Life(4000, LifeEnd.ReachedLimit), Life.Of(A.FittedChain(true, 4000, (4000, 2.9), (4000, 3.1)), 3));

    [Fact]
    public void A_chain_just_fitted_has_no_life_yet() => Assert.Null(Life.Of(A.FittedChain(false, 0), 3));

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_life_lasts_more_than_nothing(double hours) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Life(hours, LifeEnd.StillRunning));
}
