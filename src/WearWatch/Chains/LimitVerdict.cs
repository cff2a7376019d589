namespace WearWatch.Chains;

/// <summary>Which limit governs a chain, and what else was weighed.</summary>
/// <param name="Governing">The lowest limit that binds, or the plant's own.</param>
/// <param name="AlsoHold">The other limits that bind, lowest first: they would govern if the first did not.</param>
/// <param name="Advice">
/// Figures that do not bind: a maker's stricter rule, or one that was only recalled. They are shown, and a person may choose one.
/// </param>
public sealed record LimitVerdict(
    ReplacementLimit Governing, IReadOnlyList<ReplacementLimit> AlsoHold, IReadOnlyList<ReplacementLimit> Advice)
{
    /// <summary>
    /// The lowest that the limit may be, in percent, where the teeth of its sprockets are not known; null where they are, or do
    /// not matter. The limit lies between this and the one that governs.
    /// </summary>
    public double? LowestByTeethPercent { get; init; }

    /// <summary>Where the take-up ends before the chain is worn; null where it does not, or its travel is not known.</summary>
    public TakeUpEnd? TakeUp { get; init; }
}
