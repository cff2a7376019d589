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

    /// <summary>Whether it lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    public required ShownCondition Condition { get; init; }

    public required double? ElongationPct { get; init; }

    public required double? RatePctPer1000H { get; init; }

    public required double? LimitPct { get; init; }

    public required LimitReason? LimitReason { get; init; }

    /// <summary>What comes to its limit before its length, and gives the early date; null where the length is first.</summary>
    public required LimitAhead? Sooner { get; init; }

    public required DateTimeOffset? EarlyDate { get; init; }

    /// <summary>When it is to be shortened at the earliest; null where that does not come first.</summary>
    public required DateTimeOffset? ShortenFrom { get; init; }

    /// <summary>When it is to be tensioned anew at the earliest, by its slack; null where that is not in sight.</summary>
    public required DateTimeOffset? TensionFrom { get; init; }

    /// <summary>Whether it is shortened by that day, not only tensioned anew.</summary>
    public bool IsShortened => ShortenFrom is { } shorten && !(TensionFrom < shorten);

    /// <summary>The day by which it is shortened or tensioned anew, the first of them; null where neither is in sight.</summary>
    public DateTimeOffset? TensionBy => IsShortened ? ShortenFrom : TensionFrom;

    /// <summary>From when it is out of use, of a chain that lifts or holds a load.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>When the shutdown begins in which its swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    public required DateTimeOffset? NextOilingAt { get; init; }

    public required DateTimeOffset? LastReadingAt { get; init; }

    /// <summary>The address of the chain's page.</summary>
    public string Link => "/chains/" + Uri.EscapeDataString(Name);
}
