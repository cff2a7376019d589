using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>Assesses one chain live from its raw rows, for its page.</summary>
public sealed class ChainReader(ChainReview review, IDbContextFactory<WearDb> database)
{
    /// <summary>
    /// The assessment as of now, or null when there is no such chain. Its reading indices count the chain's standing readings.
    /// </summary>
    public async Task<Assessment?> AssessAsync(int chainId, CancellationToken ct = default) =>
        (await ReviewAsync(chainId, ct))?.Assessment;

    /// <summary>All that a review concludes of a chain as of now, or null when there is no such chain.</summary>
    public async Task<ReviewedChain?> ReviewAsync(int chainId, CancellationToken ct = default) =>
        (await review.AssessAsync([chainId], ct)).SingleOrDefault();

    /// <summary>
    /// What was told of a chain, the rows behind the assessment's reading indices among it; null when there is no such chain.
    /// </summary>
    public async Task<RawChain?> RawAsync(int chainId, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return (await RawChain.LoadAsync(db, [chainId], ct)).SingleOrDefault();
    }
}
