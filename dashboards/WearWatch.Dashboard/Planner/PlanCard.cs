using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Planner;

/// <summary>A swap on the board.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Line">Its line.</param>
/// <param name="WindowId">Where it stands, or null.</param>
/// <param name="Placing">Who put it there.</param>
/// <param name="Condition">The chain's condition.</param>
/// <param name="Band">When it reaches its limit, in words.</param>
/// <param name="Risk">Probability that it passes its limit before.</param>
/// <param name="Parts">How its parts stand.</param>
/// <param name="LaterCosts">What moving it to the line's next shutdown would change, or null when there is none.</param>
/// <param name="HasNote">Whether a person left a note.</param>
public sealed record PlanCard(
    string Chain, string Line, string? WindowId, SwapPlacing Placing, ShownCondition Condition, string Band, double Risk,
    PartState Parts,
    double? LaterCosts, bool HasNote);
