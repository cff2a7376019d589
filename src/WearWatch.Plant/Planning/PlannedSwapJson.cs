using WearWatch.Planning.Plans;
using WearWatch.Plant.Files;
using WearWatch.Plant.WorkOrders;

namespace WearWatch.Plant.Planning;

/// <summary>The swap of a chain in a plan.</summary>
public sealed record PlannedSwapJson
{
    /// <summary>The id of the decision that is saved, such as <c>swap-12</c>; null while none is.</summary>
    public required string? Id { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>Its position.</summary>
    public required string Position { get; init; }

    /// <summary>Its type, as the store calls it.</summary>
    public required string ChainType { get; init; }

    /// <summary>The id of the shutdown; null for not within the horizon.</summary>
    public required string? Shutdown { get; init; }

    /// <summary>When the shutdown begins.</summary>
    public required DateTimeOffset? ShutdownStart { get; init; }

    /// <summary>When it is over.</summary>
    public required DateTimeOffset? ShutdownEnd { get; init; }

    /// <summary>How firmly it stands: <c>proposed</c>, <c>by_hand</c> or <c>locked</c>.</summary>
    public required string Placing { get; init; }

    /// <summary>Why, in a person's words.</summary>
    public required string Note { get; init; }

    /// <summary>When nineteen of twenty such chains still have not reached the limit; null when not in sight.</summary>
    public required DateTimeOffset? LimitEarly { get; init; }

    /// <summary>When nineteen of twenty have; null when there is no upper limit yet.</summary>
    public required DateTimeOffset? LimitLate { get; init; }

    /// <summary>What reaches its limit first and dates it, such as <c>pin diameter</c>; null for the length.</summary>
    public required string? LimitedBy { get; init; }

    /// <summary>The moment after which a chain that holds a load must not be used; null for none.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>From when it is out of use, since no shutdown by that moment is planned for its swap; null for none.</summary>
    public required DateTimeOffset? OutOfUseFrom { get; init; }

    /// <summary>What no figure says of a chain that lifts or holds a load; null for any other.</summary>
    public required string? Caution { get; init; }

    /// <summary>Probability that the chain passes its limit before it is swapped, 0 to 1.</summary>
    public required double ProbabilityPastLimit { get; init; }

    /// <summary>Probability that it fails before, 0 to 1.</summary>
    public required double ProbabilityFailed { get; init; }

    /// <summary>What is cut and laid out for it.</summary>
    public required KitJson Kit { get; init; }

    /// <summary>A swap of a draft.</summary>
    public static PlannedSwapJson Of(PlanDraft draft, Placement placement)
    {
        var (face, place) = (draft.Picture.Faces[placement.Chain], draft.PlaceOf(placement.Chain));
        return new PlannedSwapJson
        {
            Id = draft.Picture.Swaps.GetValueOrDefault(placement.Chain) is { } kept ? SwapId.Of(kept.Id) : null,
            Chain = placement.Chain,
            Line = face.Row.Line,
            Position = face.Row.Position,
            ChainType = PlanQuery.TypeOf(face.Row),
            Shutdown = placement.Window?.Id,
            ShutdownStart = placement.Window?.Start,
            ShutdownEnd = placement.Window?.End,
            Placing = FileWords.Of(place.Placing),
            Note = place.Note,
            LimitEarly = face.Early,
            LimitLate = face.Late,
            LimitedBy = face.LimitedBy.IsEmpty ? null : face.LimitedBy.ToString(),
            OutOfUseBy = draft.Board.OutOfUseBy(placement.Chain),
            OutOfUseFrom = placement.OutOfUseFrom,
            Caution = face.Row.HoldsLoad ? Chains.Caution.LiftingInBrief.ToString() : null,
            ProbabilityPastLimit = Math.Round(placement.Own.ProbabilityPast, 4),
            Kit = KitJson.Of(face, draft.Board.Input.Tasks.Single(t => t.Chain == placement.Chain).TakesSprockets),
            ProbabilityFailed = Math.Round(placement.Own.ProbabilityFailed, 4),
        };
    }
}
