using WearWatch.Chains;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>At which elongation a chain is to be replaced, and why.</summary>
public sealed record LimitJson
{
    /// <summary>The elongation that governs, in percent.</summary>
    public required double LimitPct { get; init; }

    /// <summary>Why, as a word of the files.</summary>
    public required string Reason { get; init; }

    /// <summary>Where the limit is from.</summary>
    public required string Source { get; init; }

    /// <summary>The rule in words.</summary>
    public required Phrase Rule { get; init; }

    /// <summary>Whether it was read in the source; false for a recalled one.</summary>
    public required bool Verified { get; init; }

    /// <summary>The elongation in percent from which a swap has to be planned by the rule; null where it names none.</summary>
    public required double? PlanFromPct { get; init; }

    /// <summary>The lowest that the limit may be where the teeth of the sprockets were not told; null where they were.</summary>
    public required double? LowestByTeethPct { get; init; }

    /// <summary>Limits that hold besides, and govern later.</summary>
    public required IReadOnlyList<LimitRuleJson> AlsoHold { get; init; }

    /// <summary>Limits that are advice only.</summary>
    public required IReadOnlyList<LimitRuleJson> Advice { get; init; }

    /// <summary>What to do about the sprockets at the swap.</summary>
    public required Phrase Sprockets { get; init; }

    /// <summary>Whether it lifts or holds a load; then the limit is for a competent person, and no figure releases it.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<Phrase> Caution { get; init; }

    /// <summary>
    /// What the elongation does to the length; null when length, pitch or elongation was not told, or nothing may be taken out.
    /// </summary>
    public required SlackJson? Slack { get; init; }

    /// <summary>Where the take-up ends before the chain is worn; null where it does not, or that is not known.</summary>
    public required TakeUpJson? TakeUp { get; init; }

    /// <summary>The wire form of a calculation.</summary>
    public static LimitJson Of(LimitCalculation worked)
    {
        var governing = worked.Limits.Governing;
        return new LimitJson
        {
            LimitPct = governing.Percent,
            Reason = FileWords.Of(governing.Reason),
            Source = governing.Source,
            Rule = governing.Rule,
            Verified = governing.IsVerified,
            PlanFromPct = governing.PlanFromPercent,
            LowestByTeethPct = worked.Limits.LowestByTeethPercent,
            AlsoHold = [.. worked.Limits.AlsoHold.Select(Other)],
            Advice = [.. worked.Limits.Advice.Select(Other)],
            Sprockets = worked.Sprockets,
            HoldsLoad = worked.Case.Lifts,
            Caution = worked.Cautions,
            Slack = worked.Slack is { } slack
                ? new SlackJson(slack.ExtraLengthMm, slack.TakeUpUsedMm, slack.RemovablePitches, slack.NextRemovalPercent,
                    worked.SlackAdvice!)
                : null,
            TakeUp = worked.Limits.TakeUp is { } end ? TakeUpJson.Of(end) : null,
        };

        static LimitRuleJson Other(ReplacementLimit limit) =>
            new(limit.Percent, FileWords.Of(limit.Reason), limit.Source, limit.Rule, limit.IsVerified);
    }
}
