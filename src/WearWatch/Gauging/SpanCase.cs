using WearWatch.Chains;

namespace WearWatch.Gauging;

/// <summary>What decides over how many pitches a chain is best measured.</summary>
public sealed record SpanCase
{
    /// <summary>How it will be measured; its number of pitches and lengths do not matter.</summary>
    public required MeasuredSpan Span { get; init; }

    /// <summary>The limit it is held against; one that names a mark for planning is measured well enough for that.</summary>
    public required ReplacementLimit Limit { get; init; }

    /// <summary>Pitches of the whole chain; null when not known.</summary>
    public int? ChainPitches { get; init; }

    /// <summary>Distance of the shafts in millimetres: no straight span is longer. Null when not known.</summary>
    public double? CentreDistanceMm { get; init; }

    /// <summary>Whether it lifts or holds a load: it hangs, and all of it can be straight.</summary>
    public bool HoldsLoad { get; init; }

    /// <summary>Its elongation in percent; null when it is not known.</summary>
    public double? ElongationPercent { get; init; }

    /// <summary>Over how many pitches it was measured last time; null when it was not.</summary>
    public int? LastPitches { get; init; }

    /// <summary>The marked section that was measured last time, or empty.</summary>
    public string LastPlace { get; init; } = "";

    /// <summary>The case of a chain at its position, measured by tape.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="limit">The limit that governs it.</param>
    public static SpanCase Of(ChainCard card, ReplacementLimit limit) => new()
    {
        Span = new MeasuredSpan
        {
            PitchMm = card.PitchMm,
            Pitches = 1,
            LengthsMm = [],
            Family = card.Family,
            ListedTolerancePercent = ChainCatalogue.Find(card.ChainType)?.NewLengthTolerancePercent?.Value,
        },
        Limit = limit,
        ChainPitches = card.Pitches,
        CentreDistanceMm = card.CentreDistanceMm,
        HoldsLoad = card.HoldsLoad,
    };

    /// <summary>The elongation in percent at which something is decided first.</summary>
    internal double DecidesAtPercent => Math.Min(Limit.Percent, Limit.PlanFromPercent ?? Limit.Percent);

    /// <summary>From three quarters of the limit on it is near; common practice.</summary>
    internal bool IsNearLimit => ElongationPercent >= 0.75 * DecidesAtPercent;

    /// <summary>
    /// Pitches that can be straight at once: of a loop over two wheels at most half, and no more than lie between the shafts.
    /// </summary>
    internal int? Reachable
    {
        get
        {
            var between = CentreDistanceMm is { } mm && Span.Family.RunsOnTeeth
                ? (int?)Math.Max(1, (int)(mm / Span.PitchMm))
                : null;
            var ofChain = Span.Family.RunsOnTeeth && !HoldsLoad ? ChainPitches / 2 : ChainPitches;
            return between is { } a && ofChain is { } b ? Math.Min(a, b) : between ?? ofChain;
        }
    }
}
