using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Links;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain.Links;

/// <summary>One visit to the links, for the screen.</summary>
/// <param name="Row">Its row.</param>
/// <param name="Words">When, where, and what was measured.</param>
/// <param name="By">Who told it.</param>
public sealed record LinkVisitLine(LinkMeasureRow Row, string Words, string By);

/// <summary>What the page of a round-link chain says of its links.</summary>
public sealed record LinkPanelView
{
    private const int VisitsShown = 8;

    /// <summary>Why nothing can be judged: the diameter is not on the card; empty where it is.</summary>
    public required string Missing { get; init; }

    /// <summary>Over how many links a length is measured.</summary>
    public required int Links { get; init; }

    /// <summary>Size, and for what it is used.</summary>
    public required string Size { get; init; }

    public required string Verdict { get; init; }

    /// <summary>Wear or stretch, in a sentence; empty where it cannot be told.</summary>
    public required string Stretch { get; init; }

    public required IReadOnlyList<TrackView> Tracks { get; init; }

    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The newest visits that stand, newest first.</summary>
    public required IReadOnlyList<LinkVisitLine> Visits { get; init; }

    /// <summary>The panel of a chain of round links; null for any other.</summary>
    public static LinkPanelView? Of(ChainFacts facts, PlantTime time, UnitPreference units)
    {
        var card = facts.Assessment.Card;
        if (!card.HasLinks) return null;
        var state = facts.Links;
        return new LinkPanelView
        {
            Missing = state is null
                ? T["The diameter of its links is not known: enter it, with the maker's table, in the master data."]
                : "",
            Links = state?.Table.Links ?? LinkTable.UsualLinks,
            Size = state is null ? "" : $"{state.Table.Size}, {UseOf(state.Table.Use)}",
            Verdict = state is null ? "" : T[state.Sentence],
            Stretch = state?.Verdict.Stretch is { } stretch ? T[stretch.Sentence] : "",
            Tracks = [.. (state?.Tracks ?? []).Select(t => TrackOf(t, card.HoldsLoad, time, units))],
            Remarks = [.. (state?.Limits.Remarks ?? []).Select(r => T[r])],
            Visits = [.. facts.LinkMeasures.Reverse().Take(VisitsShown).Select(row => LineOf(row, time))],
        };
    }

    private static TrackView TrackOf(LinkTrack track, bool holdsLoad, PlantTime time, UnitPreference units)
    {
        var last = track.Points is [.., var newest] ? newest.Finding : null;
        var used = last?.UsedPercent is { } percent
            ? ", " + T[$"{Math.Max(0, percent):0} % of the way"]
            : "";
        return new(
            T[LinkWords.Of(track.Measure)],
            last is null ? T["not measured"]
                : $"{units.OfLength(last.ValueMm)} ± {units.OfLength(last.ExpandedUncertaintyMm)}{used}",
            track.Limit is { } limit ? $"{(limit.IsLength
                ? T[$"limit {units.OfLength(limit.Mm)}"]
                : T[$"least {units.OfLength(limit.Mm)}"])}; {Show.Source(T[limit.Basis])}"
                : T["No limit is known; enter the maker's."],
            TrackView.Words(track.Outlook, time),
            ConditionWords.Of(Worst(track), holdsLoad),
            [.. from point in track.Points where point.Finding.Way is not null
                select new WayPoint(point.At, point.Hours, point.Finding.Way!.Value)]);
    }

    private static Condition Worst(LinkTrack track) =>
        track.Points.Select(p => p.Finding.Condition).DefaultIfEmpty(Condition.NotKnown).MaxBy(c => (int)c);

    private static LinkVisitLine LineOf(LinkMeasureRow row, PlantTime time) => new(
        row,
        $"{(row.TakenAt is { } at ? time.Day(at) : Show.Hours(row.CounterH))}, {row.Place}: {Show.Written(row.Written)}",
        row.ToldBy);

    private static string UseOf(LinkUse? use) => use switch
    {
        LinkUse.PoweredHoist => T["powered hoist"],
        LinkUse.HandHoist => T["hand-operated hoist"],
        LinkUse.Sling => T["sling"],
        _ => T["use not recorded"],
    };
}
