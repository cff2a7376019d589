using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>The elongation at which a chain is to be replaced, and what says so.</summary>
/// <param name="Percent">The elongation in percent.</param>
/// <param name="Reason">The rule that governs.</param>
/// <param name="Source">
/// Who says so: a numbered source of docs/references.md, a standard, <c>common practice</c> or the plant.
/// </param>
public sealed record ReplacementLimit(double Percent, LimitReason Reason, string Source)
{
    /// <summary>The general limit of a roller chain on an adjustable drive.</summary>
    public const double GeneralPercent = 3.0;

    /// <summary>The rule in plain words, for the screen.</summary>
    public Phrase Rule { get; init; } = Phrase.None;

    /// <summary>
    /// Whether its source was read. A figure that was only recalled never governs while one that was read applies.
    /// </summary>
    public bool IsVerified { get; init; } = true;

    /// <summary>The elongation from which a swap must be planned, where the rule names one of its own; in percent.</summary>
    public double? PlanFromPercent { get; init; }

    /// <summary>
    /// The one rule that is meant for any chain. It governs kinds that have no rule of their own, and is advice for others.
    /// </summary>
    internal static ReplacementLimit OfAnyChain { get; } = Read(
        2, LimitReason.General, 28,
        $"a maker's rule for any chain: above 2 %, or plates worn by 5 % of their height, chain and sprockets together");

    /// <summary>The same rule for a chain that lifts, where its kind has no stricter one of its own.</summary>
    internal static ReplacementLimit OfAnyChainThatLifts { get; } = OfAnyChain with
    {
        Reason = LimitReason.Lifting,
        Rule = $"a chain that lifts: 2 %, and a competent person's judgement before that",
    };

    /// <summary>The limit of a roller chain: <c>min(3, 200/N)</c> percent, N the teeth of the largest sprocket.</summary>
    /// <remarks>
    /// Source: docs/references.md [8], [9]. One of the pages prints (2.00/N) %, which is the fraction, not the percent.
    /// </remarks>
    public static ReplacementLimit ForTeeth(IReadOnlyCollection<int> sprocketTeeth) =>
        LimitRules.For(new LimitCase { SprocketTeeth = [.. sprocketTeeth] }).Governing;

    /// <summary>The limit that governs a chain: the plant's own where it set one, else the rules.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="pitchesOut">Pitches that were taken out of it since it was fitted.</param>
    public static ReplacementLimit For(ChainCard card, int pitchesOut = 0) => LimitRules.For(card, pitchesOut).Governing;

    /// <summary>A limit that was read at a numbered source of docs/references.md.</summary>
    internal static ReplacementLimit Read(double percent, LimitReason reason, int reference, Phrase rule) =>
        new(percent, reason, $"docs/references.md [{reference}]") { Rule = rule };

    /// <summary>A limit that was recalled and not read.</summary>
    internal static ReplacementLimit Recalled(double percent, LimitReason reason, Phrase rule) =>
        new(percent, reason, Sourced.Memory) { Rule = rule, IsVerified = false };
}
