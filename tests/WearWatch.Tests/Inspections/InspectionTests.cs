using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Inspections;

namespace WearWatch.Tests.Inspections;

public sealed class InspectionTests
{
    private static readonly DateTimeOffset Day = new(2026, 11, 1, 8, 0, 0, TimeSpan.Zero);

    public static TheoryData<string, bool> Families =>
        [.. ChainFamily.All.SelectMany(f => new[] { (f.Name, false), (f.Name, true) })];

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_kind_of_chain_has_a_checklist_with_advice_and_source_each_point_once(string family, bool lifts)
    {
        var points = ChainFamily.Named(family).CheckPoints(lifts);
        Assert.Equal(points.Count, points.Select(p => p.Point).Distinct().Count());
        Assert.All(points,
            p => Assert.True(
                !p.Ask.IsEmpty && p.Advice.ToString().EndsWith('.') && p.Source.Length > 0, p.ToString()));
        Assert.True(ChainFamily.Named(family).CheckPoint(InspectionPoint.CrackedOrTurnedParts, lifts)!.StopsTheChain);
    }

    [Theory]
    [InlineData("roller", false, false)]
    [InlineData("roller", true, true)]
    [InlineData("leaf", false, true)]
    public void What_lifts_is_looked_at_up_to_its_anchors(string family, bool lifts, bool asked) =>
        Assert.Equal(asked, ChainFamily.Named(family).CheckPoint(InspectionPoint.AnchorsAndSheaves, lifts) is not null);

    // Source: docs/references.md [30]: at any elongation these reject a chain that lifts; oil and a new link do not heal them.
    [Theory]
    [MemberData(nameof(Families))]
    public void What_is_mended_on_a_drive_stops_a_chain_that_lifts(string family, bool lifts)
    {
        var kind = ChainFamily.Named(family);
        InspectionPoint[] rejecting = [InspectionPoint.StiffJoints, InspectionPoint.PlateWear, InspectionPoint.Corrosion];
        Assert.All(kind.CheckPoints(lifts).Where(p => rejecting.Contains(p.Point)),
            p => Assert.Equal(lifts || kind.AlwaysLifts, p.StopsTheChain));
        Assert.All(
            kind.CheckPoints(lifts).Where(p => lifts || kind.AlwaysLifts),
            p => Assert.DoesNotContain("shorten by", p.Advice.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public void A_finding_stands_until_a_later_look_says_that_the_point_is_in_order()
    {
        Inspection[] looks =
        [
            new(Day, [new(InspectionPoint.DryJoints, true), new(InspectionPoint.Sag, true, "much")]),
            new(Day.AddDays(30), [new(InspectionPoint.DryJoints, false)]),
            new(Day.AddDays(60), [new(InspectionPoint.Sag, true, "more")]),
        ];
        var (finding, since) = Assert.Single(Inspection.Standing(looks, null));
        Assert.Equal((InspectionPoint.Sag, "more", Day), (finding.Point, finding.Note, since));
        Assert.Equal(2, Inspection.Standing(looks[..1], null).Count);
    }

    [Fact]
    public void A_new_chain_takes_its_findings_away_but_not_those_of_the_wheels()
    {
        Inspection[] looks = [new(Day, [new(InspectionPoint.Corrosion, true), new(InspectionPoint.HookedTeeth, true)])];
        var (finding, _) = Assert.Single(Inspection.Standing(looks, fittedAt: Day.AddDays(1)));
        Assert.Equal(InspectionPoint.HookedTeeth, finding.Point);
        Assert.Empty(Inspection.Standing(looks, fittedAt: Day.AddDays(1), wheelAt: Day.AddDays(1)));
    }

    [Fact]
    public void A_notice_tells_what_was_found_and_what_to_do_and_is_urgent_where_the_chain_must_stop()
    {
        var card = new ChainCard { Name = "K-1", PitchMm = 25.4 };
        Inspection[] looks = [new(Day, [new(InspectionPoint.DryJoints, true, "at the infeed")])];
        var notice = InspectionNotice.Of(card, looks, [])!;
        Assert.Contains("red-brown", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("seen first on 1 Nov 2026, at the infeed", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("oil now", notice.WhatToDo.ToString(), StringComparison.Ordinal);
        Assert.False(notice.Urgent);
        Assert.True(InspectionNotice.Of(card, [new(Day, [new(InspectionPoint.CrackedOrTurnedParts, true)])], [])!.Urgent);
        ChainEvent replaced = new() { Chain = "K-1", Kind = ChainEventKind.Replacement, At = Day.AddDays(2) };
        Assert.Null(InspectionNotice.Of(card, looks, [replaced]));
        Assert.Null(InspectionNotice.Of(card, [new(Day, [new(InspectionPoint.DryJoints, false)])], []));
    }
}
