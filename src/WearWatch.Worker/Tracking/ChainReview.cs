namespace WearWatch.Worker.Tracking;

/// <summary>Assesses chains from their raw rows and keeps what changed: forecasts and notices.</summary>
public sealed class ChainReview
{
    /// <summary>Reviews chains.</summary>
    /// <param name="chainIds">Which; null for all.</param>
    /// <param name="progress">Told after each batch.</param>
    /// <param name="ct">Stops between two batches.</param>
    /// <returns>How many chains have a new forecast.</returns>
    public Task<int> ReviewAsync(
        IReadOnlyCollection<int>? chainIds, IProgress<ReviewProgress>? progress = null, CancellationToken ct = default) =>
        throw new NotImplementedException();
}
