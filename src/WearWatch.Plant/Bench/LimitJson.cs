using WearWatch.Chains;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>At which elongation a chain is to be replaced, and why.</summary>
public sealed record LimitJson(
    double LimitPct, string Reason, string Source, string Rule, bool Verified, double? PlanFromPct,
    IReadOnlyList<LimitRuleJson> AlsoHold,
    IReadOnlyList<LimitRuleJson> Advice, string Sprockets, SlackJson? Slack)
{
    public static LimitJson Of(LimitCalculation sheet)
    {
        var governing = sheet.Limits.Governing;
        return new LimitJson(
            governing.Percent, FileWords.Of(governing.Reason), governing.Source, governing.Rule, governing.IsVerified,
            governing.PlanFromPercent,
            [.. sheet.Limits.AlsoHold.Select(Rule)], [.. sheet.Limits.Advice.Select(Rule)], sheet.Sprockets,
            sheet.Slack is { } slack ? new SlackJson(slack.ExtraLengthMm, slack.TakeUpUsedMm, slack.RemovablePitches,
                slack.NextRemovalPercent, sheet.SlackAdvice!) : null);

        static LimitRuleJson Rule(ReplacementLimit limit) =>
            new(limit.Percent, FileWords.Of(limit.Reason), limit.Source, limit.Rule, limit.IsVerified);
    }
}

/// <summary>A limit that holds besides the governing one, or is advice.</summary>
public sealed record LimitRuleJson(double LimitPct, string Reason, string Source, string Rule, bool Verified);

/// <summary>What the elongation does to the chain's length.</summary>
public sealed record SlackJson(
    double ExtraLengthMm, double TakeUpUsedMm, int RemovablePitches, double NextRemovalPct, string Advice);
