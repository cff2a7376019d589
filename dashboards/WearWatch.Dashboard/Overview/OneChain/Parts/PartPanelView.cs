using WearWatch.Chains.Parts;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Parts;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain.Parts;

/// <summary>One reading of a part, for the screen.</summary>
/// <param name="Row">Its row.</param>
/// <param name="Words">When, where, and what was measured.</param>
public sealed record PartLine(PartReadingRow Row, string Words);

/// <summary>What a chain's page says of its parts and its wheels.</summary>
/// <param name="Parts">What can be measured at a chain of its kind.</param>
/// <param name="Tracks">What was measured, each with its limit and its date.</param>
/// <param name="Lines">The newest readings that stand, newest first.</param>
public sealed record PartPanelView(
    IReadOnlyList<WearPart> Parts, IReadOnlyList<TrackView> Tracks, IReadOnlyList<PartLine> Lines)
{
    private const int LinesShown = 8;

    /// <summary>The panel of a chain.</summary>
    public static PartPanelView Of(ChainFacts facts, PlantTime time, UnitPreference units) => new(
        [.. facts.Assessment.Card.Family.PartRules.Select(r => r.Part)],
        [.. facts.Parts.Tracks.Select(t => TrackOf(t, facts.Parts, time, units))],
        [.. facts.PartReadings.Reverse().Take(LinesShown).Select(row => new PartLine(row, WordsOf(row, time)))]);

    private static TrackView TrackOf(PartTrack track, PartsState state, PlantTime time, UnitPreference units)
    {
        var way = track.Governing?.Way;
        var used = way is { IsReached: true } ? ", " + T["limit reached"]
            : way is { Percent: var percent } ? ", " + T[$"{Math.Max(0, percent):0} % of the way"]
            : "";
        return new(
            T[track.Part.Words],
            track.Governing is { } finding ? units.OfLength(finding.Reading.Mm) + used : T["not measured since it was renewed"],
            track.Limit is { } limit ? $"{(track.Part.Grows
                ? T[$"limit {units.OfLength(limit.Mm)}"]
                : T[$"least {units.OfLength(limit.Mm)}"])}; {Show.Source(T[limit.Basis])}"
                : T["No limit is known; enter your own."],
            TrackView.Words(track.Outlook, time),
            track.Part.IsOfChain ? ConditionWords.Of(state.ConditionOf(track), state.HoldsLoad) : null,
            [.. from each in track.Findings where each.Way is not null
                select new WayPoint(each.Reading.TakenAt, each.Hours, each.Way!.Value)]);
    }

    private static string WordsOf(PartReadingRow row, PlantTime time) => string.Join(", ",
        new[]
        {
            row.TakenAt is { } at ? time.Day(at) : Show.Hours(row.CounterH), T[row.Part.Words], row.Place,
        }.Where(part => part.Length > 0)) + ": " + Show.Written(row.Written);
}
