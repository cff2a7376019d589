using System.Globalization;
using System.Text.RegularExpressions;
using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Tests.Chains;

/// <summary>
/// Every rule of tests/data/trade/wear_limits.csv, each with its source there, against what LimitRules and the checklists say.
/// </summary>
public sealed class TradeRulesTests
{
    /// <summary>A plant has no bicycles: these three are read and left out.</summary>
    private static readonly string[] LeftOut = ["WL15", "WL16", "WL17"];

    private static readonly Dictionary<string, Func<double>> Ours = new()
    {
        ["WL01"] = () => Governing(new() { SprocketTeeth = [66] }),
        ["WL02"] = () => Governing(new() { SprocketTeeth = [80] }) * 80,
        ["WL03"] = () => new[] { Governing(new() { FixedCentres = true }), Governing(new() { Parallel = true }) }.Max(),
        ["WL04"] = () => Governing(new() { HighPerformance = true }),
        ["WL05"] = () => Governing(new() { Positioning = true }),
        ["WL06"] = () => Advised(new(), "docs/references.md [11]"),
        ["WL07"] = () => Advised(new() { Family = ChainFamily.Named("conveyor") }, "docs/references.md [11]"),
        ["WL08"] = () => Governing(new() { Family = ChainFamily.Named("conveyor") }),
        ["WL09"] = () => Advised(new(), "docs/references.md [28]"),
        ["WL10"] = () => Governing(new() { Timing = true }),
        ["WL11"] = () => LimitRules.For(new LimitCase { Family = ChainFamily.Named("leaf") }).Governing.PlanFromPercent!.Value,
        ["WL12"] = () => Governing(new() { Family = ChainFamily.Named("leaf") }),
        ["WL13"] = () => PercentIn(ChainFamily.Named("leaf"), @"worn by (\d+) % of their height"),
        ["WL14"] = () => Governing(new() { Family = ChainFamily.Named("double_pitch") }),
        ["WL18"] = () => Advised(new() { FixedCentres = true }, Sourced.Memory),
        ["WL19"] = () => 100 - 100 * PercentIn(ChainFamily.Named("conveyor"), @"to (0\.\d+) of their diameter if case"),
        ["WL20"] = () => 100 - 100 * PercentIn(ChainFamily.Named("conveyor"), @"to (0\.\d+) if through"),
        ["WL21"] = () => Advised(new() { Family = ChainFamily.Named("bush") }, Sourced.Memory),
    };

    public static TheoryData<string> Ids => [.. TradeTable.Read("wear_limits.csv").Select(row => row["rule_id"]).Except(LeftOut)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_rule_of_the_trade_is_ours(string id)
    {
        var printed = Assert.Single(TradeTable.Read("wear_limits.csv"), row => row["rule_id"] == id)["limit_pct"];
        var expected = printed switch
        {
            "200/N" => 200,
            "2-3" => 3,
            "0.7-1.0" => 0.7,
            _ => double.Parse(printed, CultureInfo.InvariantCulture),
        };

        Assert.Equal(expected, Ours[id](), 1e-9);
    }

    // The two ends of the printed range of conveyor chain: plan at 2, replace at 3 %.
    [Fact]
    public void The_lower_end_of_a_printed_range_is_where_planning_begins() =>
        Assert.Equal(2, LimitRules.For(new LimitCase { Family = ChainFamily.Named("conveyor") }).Governing.PlanFromPercent);

    private static double Governing(LimitCase @case) => LimitRules.For(@case).Governing.Percent;

    private static double Advised(LimitCase @case, string source) =>
        LimitRules.For(@case).Advice.First(limit => limit.Source == source).Percent;

    private static double PercentIn(ChainFamily family, string pattern) => double.Parse(
        family.CheckPoints(lifts: false).Select(point => Regex.Match(point.Ask.ToString(), pattern))
            .First(match => match.Success).Groups[1].Value,
        CultureInfo.InvariantCulture);
}
