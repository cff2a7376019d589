using WearWatch.SensorSim.Histories;
using WearWatch.SensorSim.Measuring;
using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim.Tests;

/// <summary>Whatever the seed, the end of the history has some of everything to show.</summary>
public sealed class DashboardMixTests
{
    /// <summary>Hours within which a planner would want to know: about a quarter of a year.</summary>
    private const double PlanningHours = 13 * 130;

    public static TheoryData<int> Seeds { get; } = [1, 2, 3, 11, 2026];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void About_two_thirds_are_within_their_limit_a_fifth_is_due_and_a_twelfth_is_past(int seed)
    {
        var mill = A.Mill(seed);
        var measured = mill.Histories.Where(h => OfCurrentChain(h, mill).Any()).ToList();
        var left = measured.Select(h => h.CurrentChain.HoursLeftAt(h.Span.EndHour)).ToList();

        Assert.InRange(mill.Histories.Count - measured.Count, 4, 8);
        Assert.InRange(left.Count(h => h == 0), 5, 8);
        Assert.InRange(left.Count(h => h is > 0 and < PlanningHours), 12, 22);
        Assert.InRange(left.Count(h => h >= PlanningHours), 46, 58);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Chains_that_wear_faster_have_been_measured_before_and_after(int seed)
    {
        var mill = A.Mill(seed);
        foreach (var history in mill.Histories.Where(h => h.Fate.Outlook == Outlook.WearsFaster))
        {
            var rates = OfCurrentChain(history, mill)
                .Where(r => r.Truth.RunningHours > 500).Select(r => r.Truth.RatePercentPer1000Hours).ToList();
            Assert.True(rates.Max() > 1.7 * rates.Min(), $"{history.Position.ChainName}: {rates.Min()} to {rates.Max()}");
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Lives_are_those_of_real_chains(int seed) => Assert.All(
        A.Mill(seed).Histories, h => Assert.InRange(h.CurrentChain.LifeHours, 1_500, 120_000));

    [Fact]
    public void Some_chains_have_no_recorded_fitting_and_some_of_those_were_replaced_unseen()
    {
        var mill = A.Mill();
        var unseen = mill.Histories.Where(h => h.Fate.AreReplacementsUnrecorded).ToList();

        Assert.Equal(4, mill.Histories.Count(h => h.Fate.IsFittingUnrecorded));
        Assert.Equal(2, unseen.Count);
        Assert.All(unseen, h => Assert.Contains(
            h.Events.Until(mill.EndsAt), e => e is { Kind: MillEventKind.Replacement, IsRecorded: false }));
    }

    [Fact]
    public void Three_chains_end_with_a_reading_that_cannot_be_trusted()
    {
        var mill = A.Mill();
        var doubtful = mill.Histories.Where(h => h.Fate.IsLastReadingWrong).ToList();

        Assert.Equal(3, doubtful.Count);
        Assert.All(doubtful, h =>
        {
            var readings = h.Readings.Between(mill.StartsAt, mill.EndsAt).ToList();
            var lastRound = readings[^1].Record.TakenAt.Date;
            Assert.Contains(readings, r => r.Record.TakenAt.Date == lastRound && r.Truth.Slip != Slip.None);
        });
    }

    [Fact]
    public void The_bad_lot_wears_faster_than_the_law_expects_and_is_named_in_the_truth()
    {
        var bad = A.Mill().Histories.Where(h => h.Fate.Outlook == Outlook.BadLot).ToList();

        Assert.Equal(3, bad.Count);
        Assert.Single(bad.Select(h => (h.CurrentChain.Lot, h.Position.Size)).Distinct());
    }

    [Fact]
    public void Chains_oiled_by_hand_are_oiled_about_weekly_and_some_not_any_more()
    {
        var mill = A.Mill();
        var oilings = mill.Histories
            .Where(h => h.Position.Duty.Lubrication == Lubrication.Manual)
            .Select(h => (h.Fate, Events: h.Events.Until(mill.EndsAt).Where(e => e.Kind == MillEventKind.Oiling)))
            .Select(h => (h.Fate, At: h.Events.Select(e => e.At).ToList()))
            .ToList();

        Assert.All(oilings, o => Assert.InRange(o.At.Zip(o.At.Skip(1), (a, b) => (b - a).TotalDays).Average(), 6, 9));
        Assert.Equal(6, oilings.Count(o => o.Fate.HasOilingLapsed));
        Assert.All(oilings.Where(o => o.Fate.HasOilingLapsed), o => Assert.True((mill.EndsAt - o.At[^1]).TotalDays > 20));
    }

    private static IEnumerable<LiveReading> OfCurrentChain(PositionHistory history, Mill mill) => history.Readings
        .Between(mill.StartsAt, mill.EndsAt)
        .Where(reading => history.Span.Running.HoursAt(reading.Record.TakenAt) > history.CurrentChain.FittedAtHour);
}
