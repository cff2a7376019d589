using WearWatch.Dashboard.Kit.Words;
using WearWatch.Gauging;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>What became of a reading.</summary>
public enum ReadingVerdict
{
    /// <summary>It counts.</summary>
    Used,

    /// <summary>It counts little, since it is likelier a misreading than not.</summary>
    LikelyMisread,

    /// <summary>It does not count, since it cannot be.</summary>
    HeldBack,

    /// <summary>It waits for a person's yes.</summary>
    Waiting,

    /// <summary>It was of a place or strand that was not the worst of its visit.</summary>
    Outdone,

    /// <summary>It belongs to a chain that has been replaced since.</summary>
    EarlierChain,
}

/// <summary>A line of the table of readings.</summary>
public sealed record ReadingLine
{
    public required ReadingRow Row { get; init; }

    public required Elongation? Elongation { get; init; }

    public required ReadingVerdict Verdict { get; init; }

    /// <summary>The verdict in words, with its number.</summary>
    public required string Words { get; init; }

    private static string LeavesNothingKnown => T["its counter leaves nothing known of the chain: correct or withdraw it"];

    public long Id => Row.Id;

    /// <summary>
    /// What was told, part by part: the length as it was written, with the person's own unit beside it where that is another.
    /// </summary>
    public IEnumerable<string> Told(UnitPreference units)
    {
        var own = units.OfLength(Row.LengthMm);
        var written = Row.LengthAsTold.Length > 0 ? Show.Written(Row.LengthAsTold) : own;
        yield return written.EndsWith(units.LengthMark, StringComparison.Ordinal)
            ? T[$"{written} over {Row.Pitches}"]
            : T[$"{written} ({own}) over {Row.Pitches}"];
        yield return TradeWords.Of(Row.Tool);
        yield return Row.Place;
        yield return Row.Strand is { } strand ? T[$"strand {strand}"] : "";
        yield return Row.LoadN is { } load ? T[$"under {units.OfForce(load)}"] : Row.Taut ? T["taut"] : "";
        yield return Row.TakeUpMm is { } takeUp ? T[$"take-up at {units.OfLength(takeUp)}"] : "";
        yield return Row.TemperatureC is { } chain ? units.OfTemperature(chain) : "";
    }

    /// <summary>The lines of a chain, newest first, what waits for a person at the top.</summary>
    public static IReadOnlyList<ReadingLine> Of(ChainFacts facts)
    {
        var judged = facts.Assessment.Observations.ToDictionary(o => o.Observation.ReadingIndex);
        var heldBack = facts.Assessment.History.HeldBack.ToDictionary(h => h.ReadingIndex);
        var outdone = facts.Assessment.History.Current.Outdone;
        var waiting =
            facts.Waiting.Select(row => Line(row, facts.Row, ReadingVerdict.Waiting, T[$"to be confirmed: {row.WhyWaiting}"]));
        var standing = facts.Standing.Select((row, index) =>
            index == facts.Assessment.NotKnownByReading ? Line(row, facts.Row, ReadingVerdict.HeldBack, LeavesNothingKnown)
            : heldBack.TryGetValue(index, out var held) ? Line(row, facts.Row, ReadingVerdict.HeldBack, HeldBack(held))
            : judged.TryGetValue(index, out var observation) ? Judged(row, facts.Row, observation)
            : outdone.Contains(index)
            ? Line(row, facts.Row, ReadingVerdict.Outdone, T["not the worst of its visit: that one counts"])
            : Line(row, facts.Row, ReadingVerdict.EarlierChain, T["of an earlier chain here"]));
        return [.. waiting.Reverse(), .. standing.Reverse()];
    }

    private static ReadingLine Judged(ReadingRow row, ChainRow chain, JudgedObservation observation)
    {
        var misread = observation.ProbabilityMisreadNow;
        var chance = Show.Chance(misread);
        if (misread <= 0.5)
            return Line(row, chain, ReadingVerdict.Used, misread < 0.05 ? T["counts"] : T[$"counts, {chance} misread"]);
        return Line(row, chain, ReadingVerdict.LikelyMisread, observation.IsDoubtedInHindsight
            ? T[$"{chance} misread by the readings after it: it counts little"]
            : T[$"{chance} misread: it counts little"]);
    }

    private static string HeldBack(HeldBackReading held)
    {
        var reason = T[held.Reason];
        return held.Corrections.Count == 0
            ? reason
            : $"{reason} {T[$"Perhaps {string.Join(T[" or "], held.Corrections.Select(c => T[c]))}?"]}";
    }

    private static ReadingLine Line(ReadingRow row, ChainRow chain, ReadingVerdict verdict, string words) => new()
    {
        Row = row,
        Elongation = Gauge.Measure(chain.PitchMm, row.Pitches, row.LengthMm, row.Tool, row.TemperatureC) switch
        {
            GaugeOutcome.Measured measured => measured.Elongation,
            GaugeOutcome.Doubted doubted => doubted.Elongation,
            _ => null,
        },
        Verdict = verdict,
        Words = words,
    };
}
