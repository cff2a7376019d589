using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>The limits of a chain, with what to do besides.</summary>
/// <param name="Case">What was asked about.</param>
/// <param name="Limits">The limits.</param>
/// <param name="ElongationPercent">Its elongation, when told.</param>
public sealed record LimitCalculation(LimitCase Case, LimitVerdict Limits, double? ElongationPercent)
{
    /// <summary>What to do about the sprockets at the swap.</summary>
    public Phrase Sprockets => Case.Family.WheelAdvice(Case.Lifts, ElongationPercent);

    /// <summary>What to do about the slack; null when length, pitch or elongation is not known.</summary>
    public Phrase? SlackAdvice => Told?.AdviceFor(Case.Family, Case.Lifts, Limits.Governing.Percent);

    /// <summary>What the elongation does to the length; null where nothing may be taken out, or it is not known.</summary>
    public Shortening? Slack => Case.Family.Shortens(Case.Lifts) ? Told : null;

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public IReadOnlyList<Phrase> Cautions => Caution.For(Case.Family, Case.Lifts);

    private Shortening? Told => Case is { ChainPitches: { } pitches, PitchMm: { } pitchMm } && ElongationPercent is { } elongation
        ? Shortening.Of(pitches, pitchMm, elongation)
        : null;
}
