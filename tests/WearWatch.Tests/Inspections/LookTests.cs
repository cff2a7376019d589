using WearWatch.Chains;
using WearWatch.Inspections;

namespace WearWatch.Tests.Inspections;

public sealed class LookTests
{
    private static readonly DateTimeOffset Day = new(2026, 11, 1, 8, 0, 0, TimeSpan.Zero);

    public static TheoryData<ChainFamily, bool> Families =>
        [.. Enum.GetValues<ChainFamily>().SelectMany(f => new[] { (f, false), (f, true) })];

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_kind_of_chain_has_a_checklist_with_advice_and_source_each_point_once(ChainFamily family, bool lifts)
    {
        var points = Checklist.For(family, lifts);
        Assert.Equal(points.Count, points.Select(p => p.Point).Distinct().Count());
        Assert.All(points, p => Assert.True(p.Ask.Length > 0 && p.Advice.EndsWith('.') && p.Source.Length > 0, p.ToString()));
        Assert.True(Checklist.Find(LookPoint.CrackedOrTurnedParts, family, lifts)!.StopsTheChain);
    }

    [Theory]
    [InlineData(ChainFamily.Roller, false, false)]
    [InlineData(ChainFamily.Roller, true, true)]
    [InlineData(ChainFamily.Leaf, false, true)]
    public void What_lifts_is_looked_at_up_to_its_anchors(ChainFamily family, bool lifts, bool asked) =>
        Assert.Equal(asked, Checklist.Find(LookPoint.AnchorsAndSheaves, family, lifts) is not null);

    [Fact]
    public void A_finding_stands_until_a_later_look_says_that_the_point_is_in_order()
    {
        Look[] looks =
        [
            new(Day, [new(LookPoint.DryJoints, true), new(LookPoint.Sag, true, "much")]),
            new(Day.AddDays(30), [new(LookPoint.DryJoints, false)]),
            new(Day.AddDays(60), [new(LookPoint.Sag, true, "more")]),
        ];
        var (finding, since) = Assert.Single(Look.Standing(looks, null));
        Assert.Equal((LookPoint.Sag, "more", Day), (finding.Point, finding.Note, since));
        Assert.Equal(2, Look.Standing(looks[..1], null).Count);
    }

    [Fact]
    public void A_new_chain_takes_its_findings_away_but_not_those_of_the_wheels()
    {
        Look[] looks = [new(Day, [new(LookPoint.Corrosion, true), new(LookPoint.HookedTeeth, true)])];
        var (finding, _) = Assert.Single(Look.Standing(looks, fittedAt: Day.AddDays(1)));
        Assert.Equal(LookPoint.HookedTeeth, finding.Point);
        Assert.Empty(Look.Standing(looks, fittedAt: Day.AddDays(1), wheelAt: Day.AddDays(1)));
    }

    [Fact]
    public void A_notice_tells_what_was_found_and_what_to_do_and_is_urgent_where_the_chain_must_stop()
    {
        var card = new ChainCard { Name = "K-1", PitchMm = 25.4 };
        Look[] looks = [new(Day, [new(LookPoint.DryJoints, true, "at the infeed")])];
        var notice = LookNotice.Of(card, looks, [])!;
        Assert.Contains("red-brown", notice.Why, StringComparison.Ordinal);
        Assert.Contains("seen first on 2026-11-01, at the infeed", notice.Why, StringComparison.Ordinal);
        Assert.Contains("oil now", notice.WhatToDo, StringComparison.Ordinal);
        Assert.False(notice.Urgent);
        Assert.True(LookNotice.Of(card, [new(Day, [new(LookPoint.CrackedOrTurnedParts, true)])], [])!.Urgent);
        ChainEvent replaced = new() { Chain = "K-1", Kind = ChainEventKind.Replacement, At = Day.AddDays(2) };
        Assert.Null(LookNotice.Of(card, looks, [replaced]));
        Assert.Null(LookNotice.Of(card, [new(Day, [new(LookPoint.DryJoints, false)])], []));
    }
}
