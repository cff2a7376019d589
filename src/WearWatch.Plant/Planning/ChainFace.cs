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
    double? ElongationPct);
