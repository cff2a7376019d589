using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace WearWatch.Worker.Jobs;

/// <summary>Reviews again and again what time alone changes.</summary>
public sealed class PeriodicReview(TimelyReview review, IOptions<WearWatchOptions> options, TimeProvider clock, ILogger<PeriodicReview> logger)
    : JobLoop("review", options.Value.ReviewEvery, clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => review.RunOnceAsync(ct);
}
