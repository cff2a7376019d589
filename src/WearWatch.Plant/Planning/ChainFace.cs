using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Planning;

/// <summary>What the board shows of a chain beside its swap.</summary>
/// <param name="Row">The register's row.</param>
/// <param name="Condition">Its condition.</param>
/// <param name="Early">When nineteen of twenty such chains still have not reached the limit; null when not in sight.</param>
/// <param name="Middle">When half of them have.</param>
/// <param name="Late">When nineteen of twenty have; null when there is no upper limit yet.</param>
/// <param name="ElongationPct">Its elongation at the last reading.</param>
public sealed record ChainFace(
    ChainRow Row, ShownCondition Condition, DateTimeOffset? Early, DateTimeOffset? Middle, DateTimeOffset? Late,
    double? ElongationPct)
{
    /// <summary>What reaches its limit first, and dates it: such as <c>pin diameter</c>; empty for the length.</summary>
    public Phrase LimitedBy { get; init; } = Phrase.None;

    /// <summary>When it is to be shortened at the earliest; null where it is not, or that is not in sight.</summary>
    public DateTimeOffset? ShortenFrom { get; init; }

    /// <summary>How many pitches go then.</summary>
    public int? ShortenPitches { get; init; }

    /// <summary>The chains that run together with it, and are shortened with it at the same stop.</summary>
    public IReadOnlyList<string> ShortenWith { get; init; } = [];

    /// <summary>When it is to be tensioned anew, by its slack; null where that is not in sight.</summary>
    public DateTimeOffset? TensionFrom { get; init; }

    /// <summary>Whether the teeth of its sprockets are worn so far that they go with the chain.</summary>
    public bool SprocketsAreWorn { get; init; }
}
