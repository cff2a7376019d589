using WearWatch.Chains;
using WearWatch.Links;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What the links of a chain say: the worst of all measures, and each measure with its own limit and forecast.</summary>
internal sealed record LinkStateJson
{
    public required string Chain { get; init; }

    public required string Condition { get; init; }

    /// <summary>The condition in words, as every screen says it.</summary>
    public required string Says { get; init; }

    public required string Verdict { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<string> Caution { get; init; }

    public DateTimeOffset? EarlyDate { get; init; }

    public required IReadOnlyList<string> Remarks { get; init; }

    public required IReadOnlyList<LinkTrackJson> Measures { get; init; }

    /// <param name="state">What they say; null where the chain has no round links, or their diameter is not recorded.</param>
    /// <param name="chain">The chain.</param>
    public static LinkStateJson Of(LinksState? state, ChainCard chain)
    {
        var shown = ConditionWords.Of(state?.Condition ?? Wear.Condition.NotKnown, chain.HoldsLoad);
        return new()
        {
            Chain = chain.Name,
            Caution = [.. Chains.Caution.For(chain.Family, chain.HoldsLoad).Select(c => T[c])],
            Condition = shown.Wire,
            Says = T[shown.Words],
            Verdict = T[state?.Sentence ?? $"It has no round links, or their diameter is not in its master data."],
            EarlyDate = state?.EarlyDate,
            Remarks = [.. (state?.Limits.Remarks ?? []).Select(r => T[r])],
            Measures = [.. (state?.Tracks ?? []).Select(LinkTrackJson.Of)],
        };
    }
}

/// <summary>A measure with its limit, its newest value and its forecast.</summary>
internal sealed record LinkTrackJson
{
    public required string Measure { get; init; }

    public double? ValueMm { get; init; }

    public double? ExpandedUncertaintyMm { get; init; }

    public double? LimitMm { get; init; }

    public string? LimitBasis { get; init; }

    public double? UsedPct { get; init; }

    public DateTimeOffset? EarlyDate { get; init; }

    public DateTimeOffset? MiddleDate { get; init; }

    /// <summary>Why there is no forecast; empty where there is one.</summary>
    public required string NotKnown { get; init; }

    public required int Visits { get; init; }

    public static LinkTrackJson Of(LinkTrack track)
    {
        var (last, known) = (track.Points.Count > 0 ? track.Points[^1].Finding : null, track.Outlook as MeasureOutlook.Known);
        return new()
        {
            Measure = Tokens.Of(track.Measure),
            ValueMm = last?.ValueMm,
            ExpandedUncertaintyMm = last?.ExpandedUncertaintyMm,
            LimitMm = track.Limit?.Mm,
            LimitBasis = track.Limit is { } limit ? T[limit.Basis] : null,
            UsedPct = last?.UsedPercent,
            EarlyDate = known?.EarlyDate,
            MiddleDate = known?.MiddleDate,
            NotKnown = track.Outlook is MeasureOutlook.NotKnown not ? T[not.Reason] : "",
            Visits = track.Points.Count,
        };
    }
}
