using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Inspections;
using WearWatch.Lubrication;
using WearWatch.Plant.Bench;
using WearWatch.Running;
using WearWatch.Wear;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>Seven faults found in what was said of chains that lift, each with the chain it was found on.</summary>
public sealed class LiftingCaseTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 28, 8, 0, 0, TimeSpan.Zero);

    public static TheoryData<string> Lifting => [.. ChainFamily.All.Select(f => f.Name)];

    // 1: a leaf chain at 2.27 % was told to lose two pitches and to be joined with a new link; a hoist's roller chain, too.
    [Theory]
    [MemberData(nameof(Lifting))]
    public async Task A_chain_that_lifts_is_never_told_to_be_shortened_or_joined(string family)
    {
        var limit = Bench.Limit($"family={family}&lifts=yes&chain_pitches=120&pitch_mm=25.4&elongation_pct=2.27");
        Assert.Null(limit.Slack);
        Assert.Contains("Never shorten or splice", limit.SlackAdvice!.ToString(), StringComparison.Ordinal);
        var card = Card(family);
        Assert.Contains(EventFacts.FaultsAt(Shortened(card.Name), card), f => f.Field == "event");
        var said = string.Join(' ',
        [
            limit.Sprockets, $"{limit.SlackAdvice}", .. card.Family.CheckPoints(true).Select(p => p.Advice), await SaidAsync(
                "limit", "--family", family, "--lifts", "--chain-pitches", "120", "--pitch-mm", "25.4", "--elongation-pct",
                "2.27"),
        ]);
        Assert.DoesNotMatch(
            "(?i)take out \\d|new connecting link|shorten by|replace the chain or the link|pins and bushes together", said);
    }

    // 2: at 2.23 % on 28 November 2026 it said "plan a swap before 2027-07-18", and was not urgent.
    [Fact]
    public void A_leaf_chain_beyond_its_planning_mark_has_three_months_and_is_urgent()
    {
        var chain = Assess(Card("leaf"), [(4000, 0.6, -300), (12_000, 1.2, -200), (20_000, 1.8, -100), (25_700, 2.23, 0)]);
        Assert.Equal(Now.AddMonths(3), chain.OutOfUseBy);
        var notice = Assert.Single(chain.Notices);
        Assert.True(notice.Urgent);
        Assert.Contains("28 Feb 2027", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("swap", $"{notice.Why}" + $"{notice.WhatToDo}", StringComparison.OrdinalIgnoreCase);
    }

    // 3: at 2.96 +- 0.17 % it said "plan a swap"; a limit of 5 % was taken for a leaf chain.
    [Fact]
    public void A_chain_that_may_have_reached_its_limit_is_out_of_use_and_no_limit_above_the_standards_is_taken()
    {
        var chain = Assess(Card("leaf"), [(4000, 0.6, -300), (12_000, 1.3, -200), (20_000, 2.1, -60), (29_600, 2.96, 0)]);
        Assert.Equal("take out of use", chain.ShownCondition.Words.ToString());
        Assert.StartsWith("Take it out of use now", chain.Notices[0].WhatToDo.ToString(), StringComparison.Ordinal);
        Assert.Equal(["limit_pct"], Bench.Refused(GaugeBench.Answer(
            Bench.Ask("family=leaf&pitch_mm=25.4&pitches=24&length=615&limit_pct=5"))));
        Assert.Contains(LiftingCard.Faults(Card("leaf") with { LimitPercent = 5 }), f => f.Column == "limit_pct");
        Assert.Equal(3, ReplacementLimit.For(Card("leaf") with { LimitPercent = 5 }).Percent);
    }

    // 4: rust was "oil it"; a round-link hoist chain was asked about pins and plates.
    [Theory]
    [MemberData(nameof(Lifting))]
    public void Rust_pits_and_stiff_joints_stop_a_chain_that_lifts_and_each_kind_is_asked_about_its_own_parts(string family)
    {
        var points = ChainFamily.Named(family).CheckPoints(lifts: true);
        InspectionPoint[] stops =
        [
            InspectionPoint.CrackedOrTurnedParts, InspectionPoint.Corrosion, InspectionPoint.Pitting, InspectionPoint.StiffJoints,
            InspectionPoint.HeatMarks, InspectionPoint.AnchorsAndSheaves, InspectionPoint.Doubt,
        ];
        Assert.All(stops, stop => Assert.True(Assert.Single(points, p => p.Point == stop).StopsTheChain));
        Assert.All(points.Where(p => p.StopsTheChain), p => Assert.StartsWith("Stop", $"{p.Advice}", StringComparison.Ordinal));
        Assert.DoesNotContain(
            points, p => p.Point != InspectionPoint.DryJoints && Regex(p.Advice.ToString(), "^Oil it|^Clean and oil"));
        if (family == "round_link")
        {
            Assert.DoesNotContain(points, p => p.Point is InspectionPoint.PlateWear or InspectionPoint.TurnedPins);
            Assert.Contains(points, p => p.Point == InspectionPoint.DeformedLinks && p.StopsTheChain);
            Assert.Contains(points, p => p.Point == InspectionPoint.Hook && p.StopsTheChain);
        }

        // What stops it is told by its register until somebody releases it, and not here with advice to oil it.
        Assert.Null(InspectionNotice.Of(Card(family), [new(Now, [new(InspectionPoint.Corrosion, true)])], []));
    }

    // 5: "6x19" and a mistyped leaf type silently became roller chains of 3 % that lift nothing.
    [Theory]
    [InlineData("6x19")]
    [InlineData("LH16345")]
    public void An_unknown_designation_never_becomes_a_roller_chain(string type)
    {
        Assert.Null(ChainCatalogue.Find(type));
        Assert.Contains("type", Bench.Refused(GaugeBench.Answer(Bench.Ask($"type={type}&pitches=24&length=615"))));
        Assert.Contains("type", Bench.Refused(LimitBench.Answer(Bench.Ask($"type={type}"))));
    }

    // 6: at 200 degrees no grade was found, and yet drips and oil by hand were advised. Flash points: common practice.
    [Fact]
    public async Task No_oil_is_advised_for_a_hot_chain_and_it_is_told_why()
    {
        var advice = OilAdvice.For(Card("roller") with
        {
            Lifts = false,
            Duty = new Duty { AmbientC = 200, SpeedMetresPerSecond = 0.5 },
        });
        Assert.Equal((null, null, null), (advice.Feed, advice.Grade, advice.Amount));
        Assert.Contains("flash point", advice.Warning!.ToString(), StringComparison.Ordinal);
        Assert.Contains("explosive", advice.Warning.ToString(), StringComparison.Ordinal);
        var said = await SaidAsync("oil", "--type", "16B-1", "--speed", "0.5", "--ambient-c", "200");
        Assert.DoesNotMatch("drip|by hand", said.Replace("Warning: ", "", StringComparison.Ordinal));
        var leaf = OilAdvice.For(Card("leaf") with { Duty = new Duty { AmbientC = 20, SpeedMetresPerSecond = 0.2 } });
        Assert.Null(leaf.Feed);
        Assert.DoesNotContain("drip", leaf.Amount!.Text.ToString(), StringComparison.Ordinal);
    }

    // 7: a 22x86 link with a tenth of its diameter gone was headed "within limit: 74 %", in green, without the caution.
    [Fact]
    public async Task The_worst_of_elongation_diameter_and_findings_heads_the_gauge_with_its_caution()
    {
        var gauge = Bench.Gauge("type=22x86&pitches=11&length=950&link_diameters=19.8; 19.8");
        Assert.True(gauge.HoldsLoad);
        Assert.Equal("take out of use", gauge.ShownCondition.Words.ToString());
        Assert.Contains("19.8", gauge.Verdict.ToString().Split('%')[0], StringComparison.Ordinal);
        string[] words =
            ["gauge", "--type", "22x86", "--pitches", "11", "--length-mm", "950", "--link-diameters", "19.8; 19.8"];
        var lines = (await SaidAsync(words)).Split('\n');
        Assert.StartsWith("take out of use: ", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("Caution: " + Caution.Lifting.ToString()[..20], lines[2], StringComparison.Ordinal);
        var json = JsonDocument.Parse(await SaidAsync([.. words, "--json"])).RootElement;
        Assert.Equal(
            ("take_out_of_use", Caution.Lifting.ToString()),
            (json.GetProperty("condition").GetString(), json.GetProperty("caution")[0].GetString()));

        var sound = Bench.Gauge("pitch_mm=25.4&pitches=24&length=611&lifts=yes&tool=caliper");
        Assert.Equal("wear within limits; not a release for use", sound.ShownCondition.Words.ToString());
        Assert.NotEqual(SignalColour.Green, sound.ShownCondition.Colour);
        Assert.Equal(
            "take out of use",
            $"{Bench.Gauge("pitch_mm=25.4&pitches=24&length=611&lifts=yes&tool=caliper&found=pitting").ShownCondition.Words}");
        Assert.Contains("wear within limits", await SaidAsync(
            "gauge", "--pitch-mm", "25.4", "--pitches", "24", "--length-mm", "611", "--tool", "caliper", "--lifts"),
            StringComparison.Ordinal);
        Assert.Equal(
            ["found"], Bench.Refused(GaugeBench.Answer(Bench.Ask("pitch_mm=25.4&pitches=24&length=611&found=moths"))));
    }

    [Theory]
    [InlineData("limit", "--family", "leaf")]
    [InlineData("limit", "--type", "16B-1", "--lifts")]
    [InlineData("oil", "--family", "leaf", "--pitch-mm", "25.4")]
    [InlineData("oil", "--type", "16B-1", "--lifts")]
    [InlineData("drive", "--type", "16A-1", "--teeth", "19", "--driven-teeth", "57", "--rpm", "30",
        "--power", "0.2", "--pitches", "118", "--lifts")]
    public async Task Every_command_says_the_caution_of_a_chain_that_lifts(params string[] words)
    {
        Assert.Contains(Caution.Lifting.ToString(), await SaidAsync(words), StringComparison.Ordinal);
        var json = JsonDocument.Parse(await SaidAsync([.. words, "--json"])).RootElement;
        Assert.Equal(Caution.Lifting.ToString(), json.GetProperty("caution")[0].GetString());
    }

    private static bool Regex(string text, string pattern) => System.Text.RegularExpressions.Regex.IsMatch(text, pattern);

    private static ChainCard Card(string family) => new()
    {
        Name = "K1",
        PitchMm = 25.4,
        Family = ChainFamily.Named(family),
        Lifts = true,
        FittedAt = Now.AddDays(-400),
        FittedCounter = RunningHours.Zero,
    };

    private static ChainEvent Shortened(string chain) =>
        new() { Chain = chain, Kind = ChainEventKind.Shortened, At = Now, PitchesOut = 2 };

    private static Assessment Assess(ChainCard card, (double Hours, double Percent, double Days)[] readings) => Assessment.Of(
        card, [.. readings.Select(r => new Reading
        {
            Chain = card.Name,
            Counter = new RunningHours(r.Hours),
            TakenAt = Now.AddDays(r.Days),
            Tool = Tool.Caliper,
            Pitches = 40,
            LengthMm = 40 * card.PitchMm * (1 + r.Percent / 100),
        })], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, Now);

    private static async Task<string> SaidAsync(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal((ExitCode.Done, ""), (await CommandLine.RunAsync(words, output, error), error.ToString()));
        return output.ToString();
    }
}
