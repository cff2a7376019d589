using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Where a draft puts a chain's swap.</summary>
/// <param name="WindowId">The window, or null to keep it out of the horizon.</param>
/// <param name="Placing">Who put it there.</param>
/// <param name="Note">Why, in a person's words.</param>
public sealed record DraftPlace(string? WindowId, SwapPlacing Placing, string Note)
{
    /// <summary>A chain that nobody has placed yet.</summary>
    public static DraftPlace Nowhere { get; } = new(null, SwapPlacing.Proposed, "");

    /// <summary>Whether it decides nothing, so that nothing has to be kept of it.</summary>
    public bool IsNothing => this is { WindowId: null, IsKept: false, Note: "" };

    /// <summary>Whether a proposal leaves it where it is.</summary>
    public bool IsKept => Placing != SwapPlacing.Proposed;
}
