namespace WearWatch.Chains;

/// <summary>Which limit governs a chain, and what else was weighed.</summary>
/// <param name="Governing">The lowest limit that binds, or the plant's own.</param>
/// <param name="AlsoHold">The other limits that bind, lowest first: they would govern if the first did not.</param>
/// <param name="Advice">
/// Figures that do not bind: a maker's stricter rule, or one that was only recalled. They are shown, and a person may choose one.
/// </param>
public sealed record LimitVerdict(
    ReplacementLimit Governing, IReadOnlyList<ReplacementLimit> AlsoHold, IReadOnlyList<ReplacementLimit> Advice);
