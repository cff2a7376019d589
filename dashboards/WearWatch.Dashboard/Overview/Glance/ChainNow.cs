using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Glance;

/// <summary>What the plant at a glance needs to know of one chain.</summary>
public sealed record ChainNow(
    string Name, string Line, ShownCondition Condition, DateTimeOffset? EarlyDate, DateTimeOffset? NextOilingAt,
    bool SwapIsPlanned);
