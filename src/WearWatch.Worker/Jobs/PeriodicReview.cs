using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Jobs;

/// <summary>Reviews again and again what time alone changes. A chain that was reviewed already is not due again.</summary>
public sealed class PeriodicReview(TimelyReview review, JobBook book, ILogger<PeriodicReview> logger)
    : RegularJob("review", book, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => review.RunOnceAsync(ct);
}
