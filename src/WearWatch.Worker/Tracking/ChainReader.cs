using WearWatch.Wear;

namespace WearWatch.Worker.Tracking;

/// <summary>Assesses one chain live from its raw rows, for its page.</summary>
public sealed class ChainReader
{
    /// <summary>The assessment as of now, or null when there is no such chain. Its reading indices count the chain's standing readings.</summary>
    public Task<Assessment?> AssessAsync(int chainId, CancellationToken ct = default) => throw new NotImplementedException();
}
