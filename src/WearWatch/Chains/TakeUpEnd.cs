using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>The elongation at which the take-up of a chain is at its end, and what is done then.</summary>
/// <param name="Percent">The elongation in percent.</param>
/// <param name="Task">What is done.</param>
/// <param name="PitchesToRemove">How many pitches go then, an even number; none where the chain is replaced.</param>
/// <param name="Why">Why that is done.</param>
public sealed record TakeUpEnd(double Percent, TakeUpTask Task, int PitchesToRemove, Phrase Why)
{
    /// <summary>
    /// From this share of its limit on a chain is nearly worn out, and is not shortened any more. Common practice.
    /// </summary>
    public const double WornOutShare = 0.8;

    // The slack that is left at the end of the travel helps: nine tenths of two pitches are enough. Common practice.
    private const double EnoughOfAPitch = 0.9;

    /// <summary>The end of a take-up; null where its travel is not known, or wear ends the chain before.</summary>
    /// <param name="case">The chain at its position.</param>
    /// <param name="wearLimitPercent">The elongation in percent at which it is replaced for wear.</param>
    public static TakeUpEnd? Of(LimitCase @case, double wearLimitPercent)
    {
        if (Shortening.TakeUpLimitPercent(@case) is not { } percent || percent >= wearLimitPercent) return null;
        if (!@case.Family.Shortens(@case.Lifts))
            return Replacing(percent, $"This chain must never be shortened.");
        if (percent >= WornOutShare * wearLimitPercent)
        {
            return Replacing(
                percent, $"By then {percent / wearLimitPercent:P0} of its wear are used: to shorten it does not pay any more.");
        }

        // At the end of its travel s the take-up holds 2 s more than a new chain: so many pitches can go.
        var pairs = (int)Math.Floor(@case.TakeUpTravelMm!.Value / @case.PitchMm!.Value + (1 - EnoughOfAPitch));
        if (pairs == 0)
            return Replacing(percent, $"The travel is shorter than a pitch: two pitches can never be taken out.");
        var pitches = Shortening.UsualRemovalPitches * pairs;
        return new(percent, TakeUpTask.Shorten, pitches, $"Take out {pitches} pitches and set the take-up back.");
    }

    /// <summary>How much less travel is left than the elongation explains, in millimetres; zero where it explains all.</summary>
    /// <remarks>
    /// By its elongation the shaft stands at <c>((X - n)(1 + e/100) - X) p/2</c>. A take-up that stands farther out was set with
    /// other slack, or the wheels have worn: it ends so much sooner. One that stands nearer was not set since, and tells nothing.
    /// </remarks>
    /// <param name="case">The chain at its position.</param>
    /// <param name="positionMm">Where the take-up stood, in millimetres from where a new chain is taut.</param>
    /// <param name="elongationPercent">The elongation in percent then.</param>
    public static double AheadMm(LimitCase @case, double positionMm, double elongationPercent) =>
        @case is { ChainPitches: > 0 and var pitches, PitchMm: > 0 and var pitchMm } && @case.PitchesOut < pitches
            ? Math.Max(0, positionMm
                - Shortening.Of(pitches, pitchMm, elongationPercent, @case.PitchesOut).TakeUpUsedMm)
            : 0;

    private static TakeUpEnd Replacing(double percent, Phrase why) => new(percent, TakeUpTask.Replace, 0, why);
}
