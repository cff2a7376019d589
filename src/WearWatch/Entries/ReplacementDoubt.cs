using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>
/// A replacement that is told of a chain which is hardly worn: it may be that of the chain beside it. Told of the wrong one it
/// moves two early dates, that of a chain that still runs and that of one that does not.
/// </summary>
/// <param name="Chain">The chain that was told.</param>
/// <param name="ElongationPercent">How far it is worn by then, in percent.</param>
/// <param name="LimitPercent">Its limit, in percent.</param>
/// <param name="MostWorn">The chain on its line that is nearest to its limit; null where none is near.</param>
public sealed record ReplacementDoubt(string Chain, double ElongationPercent, double LimitPercent, string? MostWorn)
{
    /// <summary>Chains are replaced in the last third of the way to their limit. Common practice.</summary>
    private const double DueShare = 2.0 / 3;

    /// <summary>A chain that has gone less of the way is hardly worn. Common practice.</summary>
    private const double HardlyWornShare = 1.0 / 3;

    /// <summary>What to ask the person who told it.</summary>
    public Phrase Question => MostWorn is { } other
        ? Phrase.Of($"{Chain} is hardly worn: {ElongationPercent:0.00} % of {LimitPercent:0.##} %. Was it {other}?")
        : Phrase.Of($"{Chain} is hardly worn: {ElongationPercent:0.00} % of {LimitPercent:0.##} %. Was it another chain?");

    /// <summary>
    /// The question about a replacement; null where the chain is worn, where it broke, or where nothing is known of its wear.
    /// </summary>
    /// <param name="chain">The chain, as it was known before.</param>
    /// <param name="told">What was told.</param>
    /// <param name="onTheLine">Its neighbours on the line.</param>
    public static ReplacementDoubt? Of(KnownChain chain, ChainEvent told, IReadOnlyList<KnownChain> onTheLine)
    {
        if (told is not { Kind: ChainEventKind.Replacement, Broke: false }) return null;
        var at = told.At ?? chain.Readings.LastOrDefault(r => r.TakenAt is not null)?.TakenAt ?? DateTimeOffset.UnixEpoch;
        if (WayGone(chain, at) is not var (percent, limit) || percent > HardlyWornShare * limit) return null;
        var (most, name) = (DueShare, (string?)null);
        foreach (var other in onTheLine)
        {
            if (WayGone(other, at) is var (gone, its) && gone / its > most) (most, name) = (gone / its, other.Card.Name);
        }

        return new ReplacementDoubt(chain.Card.Name, percent, limit, name);
    }

    /// <summary>How far a chain is worn at a moment, and its limit; null where nothing is known of it.</summary>
    private static (double Percent, double Limit)? WayGone(KnownChain chain, DateTimeOffset at)
    {
        bool IsBefore(DateTimeOffset? then) => then is null || then <= at;
        ChainEvent[] events = [.. chain.Events.Where(e => IsBefore(e.At))];
        var known = Assessment.Of(
            chain.Card, [.. chain.Readings.Where(r => IsBefore(r.TakenAt))], events, chain.Prior, chain.Calendar, at);
        // Of a chain that was fitted since its last reading its hours tell, since nobody has measured it.
        var measured = known.ElongationPercent
            ?? (events.Any(e => e.Kind == ChainEventKind.Replacement) ? Expectation.NewChain.MeanPercent : null);
        return measured is { } percent
            ? (percent + known.RatePercentPer1000Hours * Math.Max(0, known.HoursNow - known.HoursAtLastReading) / 1000,
                known.Limit.Percent)
            : null;
    }
}
