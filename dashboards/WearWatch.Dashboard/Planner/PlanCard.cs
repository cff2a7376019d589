using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Planner;

/// <summary>A swap on the board.</summary>
public sealed record PlanCard
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>Where it stands, or null.</summary>
    public required string? WindowId { get; init; }

    /// <summary>Who put it there.</summary>
    public required SwapPlacing Placing { get; init; }

    /// <summary>The chain's condition.</summary>
    public required ShownCondition Condition { get; init; }

    /// <summary>When it reaches its limit, in words.</summary>
    public required string Band { get; init; }

    /// <summary>When its take-up is at its end and pitches go, in words; null where that does not come first.</summary>
    public required string? Shorten { get; init; }

    /// <summary>Probability that it passes its limit before.</summary>
    public required double Risk { get; init; }

    /// <summary>How its parts stand.</summary>
    public required PartState Parts { get; init; }

    /// <summary>What moving it to the line's next shutdown would change, or null when there is none.</summary>
    public required double? LaterCosts { get; init; }

    /// <summary>Whether a person left a note.</summary>
    public required bool HasNote { get; init; }

    /// <summary>Its work order in another system, in words; null while none was reported.</summary>
    public required string? Order { get; init; }

    /// <summary>Of a chain that holds a load: by when, or from when, it is out of use; null for none.</summary>
    public required string? OutOfUse { get; init; }
}
