using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>Over how many pitches to measure, and whether that is good enough for the limit.</summary>
/// <remarks>
/// The usual number of the trade (<see cref="Chains.Families.SpanRule"/>), more near the limit, and more where the uncertainty
/// asks for it; the same as last time where that is enough, so that like is compared with like.
/// </remarks>
public sealed record SpanProposal
{
    /// <summary>An expanded uncertainty of a tenth of the limit costs little of the chain's life. Common practice.</summary>
    public const double ShareOfLimit = 0.1;

    /// <summary>Longer than this no tape is held straight by one person.</summary>
    private const double LongestMm = 3000;

    /// <summary>Number of pitches to measure.</summary>
    public required int Pitches { get; init; }

    /// <summary>Their nominal length in millimetres.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Standard uncertainty then, in percent of elongation.</summary>
    public required double StandardUncertaintyPercent { get; init; }

    /// <summary>Expanded uncertainty then, k = 2, in percent of elongation.</summary>
    public double ExpandedUncertaintyPercent => 2 * StandardUncertaintyPercent;

    /// <summary>Whether the expanded uncertainty stays below a tenth of the limit.</summary>
    public required bool GoodEnough { get; init; }

    /// <summary>What to measure, in plain words.</summary>
    public required Phrase What { get; init; }

    /// <summary>Why the uncertainty is not below a tenth of the limit, and what helps; nothing where it is.</summary>
    public required Phrase WhyNot { get; init; }

    /// <summary>What to measure, how sure that is, and what else would help.</summary>
    public Phrase Advice => Phrase.Join(" ",
        [$"{What} ({LengthMm:0.#} mm when new): ± {ExpandedUncertaintyPercent:0.00} %.", WhyNot]);

    /// <summary>The proposal for a chain.</summary>
    public static SpanProposal For(SpanCase asked)
    {
        var (span, rule) = (asked.Span, asked.Span.Family.Span);
        if (rule.IsFixed) return Over(asked, rule.Fewest, $"Measure over {rule.Fewest} links");

        var step = span.LinksAlternate ? 2 : 1;
        var most = Math.Max(rule.Fewest, (int)(LongestMm / span.PitchMm));
        if (asked.Reachable is { } reachable) most = Math.Min(most, reachable);
        if (most > step) most -= most % step;
        var wanted = asked.IsNearLimit ? rule.NearLimitFor(span.PitchMm) : rule.UsualFor(span.PitchMm);
        var pitches = Math.Min(most, wanted + wanted % step);
        while (pitches + step <= most && !IsGoodEnough(asked, pitches)) pitches += step;

        if (asked.LastPitches is { } last && last >= pitches && last <= most && last % step == 0)
            return Over(asked, last, asked.LastPlace.Length > 0
                ? Phrase.Of($"Measure the same {last} pitches as last time, at {asked.LastPlace}")
                : $"Measure the same {last} pitches as last time");
        return Over(asked, pitches, asked.IsNearLimit && asked.LastPitches < pitches
            ? Phrase.Of($"Near the limit measure more: {pitches} pitches")
            : $"Measure over {pitches} pitches");
    }

    private static SpanProposal Over(SpanCase asked, int pitches, Phrase what)
    {
        var good = IsGoodEnough(asked, pitches);
        return new SpanProposal
        {
            Pitches = pitches,
            LengthMm = pitches * asked.Span.PitchMm,
            StandardUncertaintyPercent = BudgetOver(asked.Span, pitches).StandardUncertaintyPercent,
            GoodEnough = good,
            What = what,
            WhyNot = good ? Phrase.None : WhyNotGoodEnough(asked, pitches),
        };
    }

    private static bool IsGoodEnough(SpanCase asked, int pitches) =>
        BudgetOver(asked.Span, pitches).ExpandedUncertaintyPercent < ShareOfLimit * asked.DecidesAtPercent;

    private static Phrase WhyNotGoodEnough(SpanCase asked, int pitches)
    {
        var tenth = ShareOfLimit * asked.DecidesAtPercent;
        return asked.Span.New is null && asked.Span.NewLengthTolerancePercent / Math.Sqrt(3) >= tenth
            ? Phrase.Of($"That is not below a tenth of the limit ({tenth:0.00} %): the maker's tolerance hides too much. "
                + $"Measure the length when new, too.")
            : $"That is not below a tenth of the limit ({tenth:0.00} %): no longer span than {pitches} pitches can be reached. "
                + $"Take the mean of three lengths, and measure the length when new.";
    }

    private static UncertaintyBudget BudgetOver(MeasuredSpan span, int pitches)
    {
        var lengthMm = pitches * span.PitchMm;
        return UncertaintyBudget.Of(span with
        {
            Pitches = pitches,
            LengthsMm = [lengthMm],
            New = span.New is { } fresh ? fresh with { LengthMm = lengthMm } : null,
        });
    }
}
