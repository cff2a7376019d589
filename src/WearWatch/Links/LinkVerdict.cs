using WearWatch.Chains.Links;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Links;

/// <summary>What the measures of a round-link chain say together: the worst governs, never an average.</summary>
public sealed record LinkVerdict
{
    private static readonly LinkMeasure[] Wanted = [LinkMeasure.OneLink, LinkMeasure.SeveralLinks, LinkMeasure.MeanDiameter];

    /// <summary>Each measure that was taken, worst first.</summary>
    public required IReadOnlyList<LinkFinding> Findings { get; init; }

    /// <summary>Wear or stretch; null unless d1 and a length were measured together.</summary>
    public required LinkStretch? Stretch { get; init; }

    /// <summary>The three measures that nobody took, or took in part.</summary>
    public IReadOnlyList<LinkMeasure> NotMeasured => [.. Wanted.Where(m => Findings.All(f => f.Measure != m))];

    /// <summary>The worst measure; null when none was taken.</summary>
    public LinkFinding? Worst => Findings.Count > 0 ? Findings[0] : null;

    /// <summary>The severity: that of the worst, and out of use for a chain that was overloaded.</summary>
    public Condition Condition => Stretch is { IsOverload: true } ? Condition.SwapNow
        : Worst is { } worst ? worst.Condition
        : Condition.NotKnown;

    /// <summary>What heads the page: the worst in a sentence, then what was not measured.</summary>
    public Phrase Sentence => Phrase.Join(" ",
    [
        Stretch is { IsOverload: true } && Worst?.Condition is not Condition.SwapNow ? Stretch.Sentence
            : Worst is { } worst ? LinkWords.Of(worst)
            : $"Nothing was measured.",
        Missing,
    ]);

    private Phrase Missing => NotMeasured.Count == 0 ? Phrase.None
        : $"Not measured: {Phrase.Join(", ", NotMeasured.Select(LinkWords.Of))}. No statement on that.";

    /// <summary>The verdict on one visit.</summary>
    /// <param name="told">What was measured.</param>
    /// <param name="table">The chain's table.</param>
    /// <param name="limits">Its limits.</param>
    public static LinkVerdict Of(MeasuredLinks told, LinkTable table, LinkLimits limits) =>
        Of([told], table, limits);

    /// <summary>
    /// The verdict on all visits of one fitted chain: of each measure the worst ever taken, since links do not heal.
    /// </summary>
    public static LinkVerdict Of(IReadOnlyList<MeasuredLinks> visits, LinkTable table, LinkLimits limits) => new()
    {
        Findings =
        [
            .. from measure in Enum.GetValues<LinkMeasure>()
               where measure != LinkMeasure.ThinnestDiameter || limits.Of(measure) is not null
               let worst = visits.Select(v => LinkFindings.Of(v, measure, table, limits)).OfType<LinkFinding>()
                   .MaxBy(LinkFindings.Badness)
               where worst is not null
               orderby Severity(worst.Condition) descending, LinkFindings.Badness(worst) descending
               select worst,
        ],
        Stretch = visits.Select(v => LinkStretch.Of(v, table)).OfType<LinkStretch>()
            .MaxBy(s => s.GrowthPercent - s.WearPercent - s.UnsurePercent),
    };

    // Red, yellow, then what cannot be judged, then what is within its limit.
    private static int Severity(Condition condition) => condition switch
    {
        Condition.SwapNow => 3,
        Condition.PlanASwap => 2,
        Condition.NotKnown => 1,
        _ => 0,
    };
}
