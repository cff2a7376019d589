using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.ChainList;

/// <summary>One chain in the list.</summary>
public sealed record ChainListLine
{
    public required int Id { get; init; }

    public required string Name { get; init; }

    public required string Line { get; init; }

    public required string Position { get; init; }

    public required string ChainType { get; init; }

    public required ChainFamily Family { get; init; }

    public required ShownCondition Condition { get; init; }

    public required double? ElongationPct { get; init; }

    public required double? RatePctPer1000H { get; init; }

    public required double? LimitPct { get; init; }

    public required LimitReason? LimitReason { get; init; }

    public required DateTimeOffset? EarlyDate { get; init; }

    /// <summary>When it is to be shortened at the earliest; null where that does not come first.</summary>
    public required DateTimeOffset? ShortenFrom { get; init; }

    /// <summary>From when it is out of use, of a chain that lifts or holds a load.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>When the shutdown begins in which its swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    public required DateTimeOffset? NextOilingAt { get; init; }

    public required DateTimeOffset? LastReadingAt { get; init; }

    /// <summary>The address of the chain's page.</summary>
    public string Link => "/chains/" + Uri.EscapeDataString(Name);
}
