namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A stretch of the list of chains.</summary>
internal sealed record ChainPageJson(int Total, int Skip, IReadOnlyList<ChainJson> Chains);
