using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Plant.Bench;

/// <summary>A value that the program holds and that was recalled or is common practice: nobody read it at a source.</summary>
/// <param name="Of">What it is of: a chain type by its designation, or a kind of chain.</param>
/// <param name="Kind">The kind of chain.</param>
/// <param name="What">What it tells.</param>
/// <param name="Figure">The number.</param>
/// <param name="Source">What is said of its origin.</param>
public sealed record UnverifiedValue(Phrase Of, ChainFamily Kind, Phrase What, double Figure, string Source)
{
    /// <summary>All of them: of the kinds first, then of the catalogue.</summary>
    public static IReadOnlyList<UnverifiedValue> All { get; } =
        [.. ChainFamily.All.SelectMany(OfKind), .. ChainCatalogue.All.SelectMany(OfType)];

    private static IEnumerable<UnverifiedValue> OfKind(ChainFamily kind)
    {
        if (!kind.NewLengthTolerancePercent.IsVerified)
            yield return new(
                kind.Words, kind, $"tolerance of a new chain", kind.NewLengthTolerancePercent.Value,
                kind.NewLengthTolerancePercent.Source);
        if (!kind.OiledByHandHours.IsVerified)
            yield return new(
                kind.Words, kind, $"running hours between two lubrications by hand", kind.OiledByHandHours.Value,
                kind.OiledByHandHours.Source);
        if (kind.Span.Source == Sourced.Memory)
            yield return new(kind.Words, kind, $"links measured at once", kind.Span.Fewest, kind.Span.Source);
        foreach (var limit in kind.LimitAdvice.Prepend(kind.LiftingLimit).Prepend(kind.GeneralLimit).Where(l => !l.IsVerified))
            yield return new(kind.Words, kind, $"limit in percent", limit.Percent, limit.Source);
    }

    private static IEnumerable<UnverifiedValue> OfType(ChainType type) => TypeValue.Of(type)
        .Where(value => value.Value is { IsVerified: false })
        .Select(value => new UnverifiedValue(
            Phrase.Verbatim(type.Designation), type.Family, value.Name, value.Value!.Value.Value, value.Value.Value.Source));
}
