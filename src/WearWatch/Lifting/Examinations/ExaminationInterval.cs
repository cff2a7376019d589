using WearWatch.Phrases;

namespace WearWatch.Lifting.Examinations;

/// <summary>The months between two thorough examinations of a chain, with the rule that they keep to.</summary>
/// <param name="Months">The months; null where neither rule nor plant names any.</param>
/// <param name="Rule">The region's rule.</param>
/// <param name="IsCut">Whether the plant's own number was longer than the law lets it be, so that the law's counts.</param>
public sealed record ExaminationInterval(int? Months, IntervalRule Rule, bool IsCut)
{
    /// <summary>No plant's own interval is longer than this.</summary>
    public const int Longest = 120;

    /// <summary>The interval: the plant's own where it may be so long, else the rule's.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="set">The plant's own months; null leaves it to the rule.</param>
    /// <param name="schemeOnFile">Whether a written scheme of examination is on file.</param>
    public static ExaminationInterval Of(IntervalCase asked, int? set, bool schemeOnFile)
    {
        var rule = IntervalRules.For(asked);
        if (set is not { } months) return new(rule.Months, rule, IsCut: false);
        return Fault(rule, months, schemeOnFile) is null
            ? new(months, rule, IsCut: false)
            : new(rule.MostMonths, rule, IsCut: true);
    }

    /// <summary>Why a plant's own months cannot be kept; null when they can.</summary>
    public static Phrase? Fault(IntervalRule rule, int months, bool schemeOnFile)
    {
        if (months is < 1 or > Longest) return $"An interval has 1 to {Longest} months.";
        if (rule.MostMonths is not { } most || months <= most || (rule.KnowsWrittenScheme && schemeOnFile)) return null;
        return rule.KnowsWrittenScheme
            ? Phrase.Of($"At most {most} months ({rule.Source}); "
                + $"longer only under a written scheme of examination that is on file.")
            : $"At most {most} months ({rule.Source}).";
    }
}
