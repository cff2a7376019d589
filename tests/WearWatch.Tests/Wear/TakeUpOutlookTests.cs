using WearWatch.Chains;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>Oracle: geometry by hand, 200 s/(X p) percent of a loop whose take-up moves by s.</summary>
public sealed class TakeUpOutlookTests
{
    // As the review had it: 16B-1, 120 pitches, 25 mm of take-up: at 1.64 % two pitches go, at 3 % the chain.
    [Fact]
    public void A_chain_whose_take_up_ends_first_has_two_dates()
    {
        var card = A.Card() with { Pitches = 120, TakeUpTravelMm = 25 };
        var readings = A.Readings(0.5, 300, 900, 1500, 2100, 2700);
        var chain = Assessment.Of(
            card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch);

        Assert.Equal((LimitReason.General, 3.0), (chain.Limit.Reason, chain.Limit.Percent));
        Assert.Equal(1.640, chain.TakeUp!.End.Percent, 3);
        var shorten = chain.ShortenAt(50, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch);
        var replace = chain.DateAt(50, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch);
        Assert.True(shorten < replace);
        Assert.NotEqual(Condition.SwapNow, chain.Condition);
        var notice = Assert.Single(chain.Notices, n => n.Kind == NoticeKind.TakeUpEnds);
        Assert.Contains("Take out 2 pitches", notice.WhatToDo.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(chain.Notices, n => n.Kind == NoticeKind.LimitNear);

        // The take-up was read 10 mm farther out than 1.55 % explain.
        readings[^1] = readings[^1] with { TakeUpMm = 33.6 };
        var read = Assessment.Of(
            card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, DateTimeOffset.UnixEpoch);
        Assert.InRange(read.TakeUp!.End.Percent, 0.9, 1.1);
        Assert.True(Assert.Single(read.Notices, n => n.Kind == NoticeKind.TakeUpEnds).Urgent);
    }
}
