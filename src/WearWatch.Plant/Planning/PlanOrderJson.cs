using WearWatch.Planning.Plans;

namespace WearWatch.Plant.Planning;

/// <summary>What must be ordered of a part for a plan.</summary>
public sealed record PlanOrderJson
{
    /// <summary>The part, such as <c>16B-1 chain</c>.</summary>
    public required string Part { get; init; }

    /// <summary>What its quantity counts: <c>pitches</c> or <c>pieces</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>How much, in whole packs.</summary>
    public required int Quantity { get; init; }

    /// <summary>Whether the store keeps a record of it; if not, nothing is taken to be there.</summary>
    public required bool OnRecord { get; init; }

    /// <summary>The last day on which an ordinary order still arrives.</summary>
    public required DateTimeOffset? LatestOrder { get; init; }

    /// <summary>The first swap or shortening that lacks it.</summary>
    public required DateTimeOffset? NeededBy { get; init; }

    /// <summary>What is cut and laid out for each swap that takes it.</summary>
    public required IReadOnlyList<KitJson> Kits { get; init; }

    /// <summary>The chains that are shortened with it before they are replaced.</summary>
    public required IReadOnlyList<string> Rejoins { get; init; }

    /// <summary>The orders of a draft.</summary>
    public static IReadOnlyList<PlanOrderJson> Of(PlanDraft draft)
    {
        var (input, faces) = (draft.Board.Input, draft.Picture.Faces);
        var shortenings = PlannedShortening.LeftBy(draft.Plan, input);
        return
        [
            .. from order in OrderList.For(input, draft.Plan)
               where order.Quantity > 0
               let part = order.Spare.Part
               select new PlanOrderJson
               {
                   Part = part.ToString(),
                   Unit = part.Unit.ToString(),
                   Quantity = order.Quantity,
                   OnRecord = order.OnRecord,
                   LatestOrder = order.LatestOrder,
                   NeededBy = order.NeededBy,
                   Kits = [.. input.Tasks.Where(t => t.Needs.Any(need => need.Part == part))
                       .Select(t => KitJson.Of(faces[t.Chain], t.TakesSprockets))],
                   Rejoins = [.. shortenings.Where(s => s.Needs.Any(need => need.Part == part)).Select(s => s.Chain)],
               },
        ];
    }
}
