using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class KnowledgeFloorTests
{
    private static readonly Reading[] Honest = A.Readings(0.6, 300, 750, 1200, 1700, 2200, 2600, 3000);

    // A chain that wore 0.6 % in 1,000 h grows by nothing in 5,000 h: either the reading or the counter cannot be.
    [Fact]
    public void A_counter_that_leaves_nothing_known_makes_the_condition_not_known_and_is_named()
    {
        var chain = Assess([.. Honest, A.Reading(8_000, 2.03)]);

        Assert.Equal(Condition.NotKnown, chain.Condition);
        Assert.Contains("2.03 %", chain.WhyNotKnown.ToString(), StringComparison.Ordinal);
        Assert.Equal(Honest.Length, chain.NotKnownByReading);
        var notice = Assert.Single(chain.Notices);
        Assert.Equal((NoticeKind.ReadingHeldBack, true), (notice.Kind, notice.Urgent));
        Assert.Contains("Correct or withdraw", notice.WhatToDo.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_told_of_it_rests_on_the_other_readings()
    {
        var (sound, spoiled) = (Assess(Honest), Assess([.. Honest, A.Reading(8_000, 2.03)]));

        Assert.Equal(sound.ElongationPercent!.Value, spoiled.ElongationPercent!.Value, 0.05);
        Assert.InRange(spoiled.Forecast.EarlyHours!.Value / sound.Forecast.EarlyHours!.Value, 0.8, 1.2);
    }

    [Fact]
    public void A_sound_chain_and_one_that_is_worn_far_are_known()
    {
        Assert.Equal("", Assess(Honest).WhyNotKnown.ToString());
        Assert.Equal("", Assess(A.Readings(0.4, 300, 1500, 3000, 4500, 6000, 7400)).WhyNotKnown.ToString());
        Assert.Equal("", Assess([A.Reading(300, 0.3)]).WhyNotKnown.ToString());
    }

    private static Assessment Assess(IReadOnlyList<Reading> readings) => Assessment.Of(
        A.Card(), readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, A.Monday);
}
