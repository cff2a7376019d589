namespace WearWatch.Gauging;

/// <summary>How many pitches to measure so that the measurement is good enough for the limit.</summary>
/// <param name="Pitches">Number of pitches to measure.</param>
/// <param name="LengthMm">Their nominal length in millimetres.</param>
/// <param name="StandardUncertaintyPercent">Standard uncertainty then, in percent of elongation.</param>
/// <param name="GoodEnough">Whether that stays below a tenth of the limit.</param>
/// <param name="Advice">What to do, in plain words.</param>
public sealed record SpanProposal(int Pitches, double LengthMm, double StandardUncertaintyPercent, bool GoodEnough, string Advice)
{
    /// <summary>An uncertainty of a tenth of the limit costs little of the chain's life. Common practice.</summary>
    public const double ShareOfLimit = 0.1;

    /// <summary>Longer than this no tape is held straight by one person.</summary>
    private const double LongestMm = 3000;

    /// <summary>Fewer than this say little of a chain. Source: docs/references.md [27], at least 4 links.</summary>
    private const int FewestPitches = 4;

    /// <summary>The proposal for a chain.</summary>
    /// <param name="span">How it will be measured; its number of pitches and lengths do not matter.</param>
    /// <param name="limitPercent">The limit in percent.</param>
    /// <param name="chainPitches">Pitches of the whole chain, when known: more cannot be measured.</param>
    public static SpanProposal For(MeasuredSpan span, double limitPercent, int? chainPitches = null)
    {
        if (span.Family.FixedSpan is { } links) return Over(span, links, limitPercent, $"Measure over {links} links");
        var step = span.LinksAlternate ? 2 : 1;
        var most = Math.Max(FewestPitches, (int)(LongestMm / span.PitchMm));
        if (chainPitches is { } all) most = Math.Clamp(all, 1, most);
        if (most > step) most -= most % step;

        for (var pitches = Math.Min(FewestPitches, most); pitches < most; pitches += step)
        {
            var proposal = Over(span, pitches, limitPercent, $"Measure over {pitches} pitches");
            if (proposal.GoodEnough) return proposal;
        }

        var longest = Over(span, most, limitPercent, $"Measure over {most} pitches");
        return longest.GoodEnough || span.New is not null
            ? longest
            : longest with
            {
                Advice = longest.Advice + "; measure the length when new, too: the maker's tolerance hides too much",
            };
    }

    private static SpanProposal Over(MeasuredSpan span, int pitches, double limitPercent, string advice)
    {
        var lengthMm = pitches * span.PitchMm;
        var planned = span with
        {
            Pitches = pitches,
            LengthsMm = [lengthMm],
            New = span.New is { } fresh ? fresh with { LengthMm = lengthMm } : null,
        };
        var uncertainty = UncertaintyBudget.Of(planned).StandardUncertaintyPercent;
        return new SpanProposal(pitches, lengthMm, uncertainty, uncertainty < ShareOfLimit * limitPercent,
            FormattableString.Invariant($"{advice} ({lengthMm:0.#} mm): {uncertainty:0.000} % standard uncertainty"));
    }
}
