using WearWatch.Planning.Supply;

namespace WearWatch.Plant.Planning;

/// <summary>What must be ordered of a part for a plan.</summary>
/// <param name="Part">The part, such as <c>16B-1 chain</c>.</param>
/// <param name="Unit">What its quantity counts: <c>pitches</c> or <c>pieces</c>.</param>
/// <param name="Quantity">How much, in whole packs.</param>
/// <param name="OnRecord">Whether the store keeps a record of it; if not, nothing is taken to be there.</param>
/// <param name="LatestOrder">The last day on which an ordinary order still arrives.</param>
/// <param name="NeededBy">The first swap that lacks it.</param>
public sealed record PlanOrderJson(
    string Part, string Unit, int Quantity, bool OnRecord, DateTimeOffset? LatestOrder, DateTimeOffset? NeededBy)
{
    /// <summary>An order on the wire.</summary>
    public static PlanOrderJson Of(PartOrder order) => new(
        order.Spare.Part.ToString(), order.Spare.Part.Unit.ToString(), order.Quantity, order.OnRecord, order.LatestOrder,
        order.NeededBy);
}
