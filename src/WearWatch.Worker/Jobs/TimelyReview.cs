using Microsoft.Extensions.Logging;
using WearWatch.Plant.Tracking;

namespace WearWatch.Worker.Jobs;

/// <summary>
/// Reviews the chains whose forecast is of yesterday, of an older fleet model, or older than their last reading.
/// </summary>
public sealed class TimelyReview(DueReviews due, ChainReview review, ILogger<TimelyReview> logger)
{
    /// <summary>Reviews what is due now.</summary>
    /// <returns>How many chains have something new.</returns>
    public async Task<int> RunOnceAsync(CancellationToken ct = default)
    {
        var chains = await due.FindAsync(ct);
        if (chains.Count == 0) return 0;
        var changed = await review.ReviewAsync(chains, null, ct);
        logger.Reviewed(chains.Count, changed);
        return changed;
    }
}
