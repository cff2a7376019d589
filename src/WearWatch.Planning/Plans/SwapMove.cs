using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>A place to which a swap could go.</summary>
/// <param name="Window">The window, or null for not in the horizon.</param>
/// <param name="Change">By how much the whole plan would cost more there; negative when it would cost less.</param>
/// <param name="Own">What the swap costs there by itself, with its risks.</param>
/// <param name="OutOfUseFrom">From when the chain is out of use there, since it holds a load; null where it is not.</param>
/// <param name="WhyNotProposed">Why no proposal puts the swap there; null when one may.</param>
public sealed record SwapMove(
    ShutdownWindow? Window, double Change, OwnCost Own, DateTimeOffset? OutOfUseFrom, Phrase? WhyNotProposed);
