using WearWatch.Chains.Families;
using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>What elongation does to a chain's length: slack for the take-up, and pitches that can be taken out.</summary>
/// <param name="ExtraLengthMm">How much longer the whole chain has become, in millimetres: <c>X p e/100</c>.</param>
/// <param name="TakeUpUsedMm">How far the shaft must move to take that up between two parallel spans: half of it.</param>
/// <param name="RemovablePitches">Pitches that can be taken out now, an even number so that no offset link is needed.</param>
/// <param name="NextRemovalPercent">The elongation at which the next two pitches can be taken out.</param>
public sealed record Shortening(double ExtraLengthMm, double TakeUpUsedMm, int RemovablePitches, double NextRemovalPercent)
{
    /// <summary>A take-up should allow the removal of two pitches. Source: docs/references.md [38].</summary>
    public const int UsualRemovalPitches = 2;

    /// <summary>All pitches taken out of the chain that runs now: since the last replacement; untold ones are none.</summary>
    /// <param name="events">The events of a position, in the order in which they happened.</param>
    public static int PitchesOut(IReadOnlyList<ChainEvent> events)
    {
        var fitted = events.ToList().FindLastIndex(e => e.Kind == ChainEventKind.Replacement);
        return events.Skip(fitted + 1).Sum(e => e.PitchesOut ?? 0);
    }

    /// <summary>For a chain of so many pitches at an elongation.</summary>
    /// <param name="chainPitches">Pitches of the whole chain when new, X; above zero.</param>
    /// <param name="pitchMm">Nominal pitch in millimetres, p.</param>
    /// <param name="elongationPercent">Elongation in percent, e; below zero counts as zero.</param>
    /// <param name="pitchesOut">Pitches taken out already, n; fewer than all.</param>
    /// <remarks>What is left is longer than the X pitches of the new chain by <c>((X - n)(1 + e/100) - X) p</c>.</remarks>
    public static Shortening Of(int chainPitches, double pitchMm, double elongationPercent, int pitchesOut = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(chainPitches, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(pitchesOut, chainPitches);
        var left = chainPitches - pitchesOut;
        var extraPitches = Math.Max(0, left * Math.Max(0, elongationPercent) / 100 - pitchesOut);
        // A hair's breadth below two pitches is two pitches: the percent was computed from them.
        var pairs = (int)Math.Floor(extraPitches / UsualRemovalPitches + 1e-9);
        return new Shortening(
            extraPitches * pitchMm, extraPitches * pitchMm / 2, UsualRemovalPitches * pairs,
            100.0 * (UsualRemovalPitches * (pairs + 1) + pitchesOut) / left)
        {
            ElongationPercent = elongationPercent,
        };
    }

    /// <summary>
    /// The elongation at which the travel of the take-up is used up: <c>100 (2 s/p + n)/(X - n)</c> percent, s the travel, n the
    /// pitches taken out; <c>200 s/(X p)</c> while none are.
    /// </summary>
    /// <remarks>
    /// Two parallel spans: a shaft that moves by s takes up 2 s, so a worn chain of X - n pitches may be as long as
    /// <c>X p + 2 s</c>. Null when the travel, the length or the pitch is not known, or
    /// without any travel: then the centres are fixed.
    /// </remarks>
    public static double? TakeUpLimitPercent(LimitCase @case) =>
        @case is { TakeUpTravelMm: > 0 and var travel, ChainPitches: > 0 and var pitches, PitchMm: > 0 and var pitchMm }
            && @case.PitchesOut < pitches
            ? 100 * (2 * Math.Max(0, travel - @case.TakeUpAheadMm) + @case.PitchesOut * pitchMm)
                / ((pitches - @case.PitchesOut) * pitchMm)
            : null;

    /// <summary>The elongation in percent for which it was worked out.</summary>
    public double ElongationPercent { get; init; }

    /// <summary>What to do about the slack of a chain, in plain words.</summary>
    /// <param name="family">The kind of chain.</param>
    /// <param name="lifts">Whether its card says that it lifts.</param>
    /// <param name="limitPercent">The elongation in percent at which it is replaced.</param>
    public Phrase AdviceFor(ChainFamily family, bool lifts, double limitPercent)
    {
        if (!family.Shortens(lifts))
            return $"Never shorten or splice this chain: it is judged by its wear, and replaced whole. Slack that the take-up "
                + $"cannot hold needs a competent person.";
        if (ElongationPercent >= TakeUpEnd.WornOutShare * limitPercent)
            return $"Do not shorten it any more: {ElongationPercent:0.00} % of {limitPercent:0.0#} % are used. Plan its "
                + $"replacement.";
        return RemovablePitches > 0
            ? Phrase.Of($"Take out {RemovablePitches} pitches and set the take-up back; join with a new connecting link, not an "
                + $"offset link.")
            : NextRemovalPercent < TakeUpEnd.WornOutShare * limitPercent
                ? Phrase.Of($"Nothing to take out yet: two pitches can go at {NextRemovalPercent:0.0} %.")
                : $"Nothing to take out before it is nearly worn out.";
    }
}
