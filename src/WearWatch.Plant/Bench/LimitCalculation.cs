using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>The limits of a chain, with what to do besides.</summary>
/// <param name="Case">What was asked about.</param>
/// <param name="Limits">The limits.</param>
/// <param name="ElongationPercent">Its elongation, when told.</param>
public sealed record LimitCalculation(LimitCase Case, LimitVerdict Limits, double? ElongationPercent)
{
    /// <summary>What to do about the sprockets at the swap.</summary>
    public string Sprockets => Case.Family.SprocketAdvice(ElongationPercent);

    /// <summary>What to do about the slack; null where <see cref="Slack"/> is.</summary>
    public string? SlackAdvice => Slack?.AdviceFor(Case.Family, Case.Lifts);

    /// <summary>What the elongation does to the length; null when length, pitch or elongation is not known.</summary>
    public Shortening? Slack => Case is { ChainPitches: { } pitches, PitchMm: { } pitchMm } && ElongationPercent is { } elongation
        ? Shortening.Of(pitches, pitchMm, elongation)
        : null;
}
