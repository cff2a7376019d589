using System.Globalization;
using WearWatch.Chains;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Files;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Commands;

/// <summary>A swap plan as lines of text.</summary>
internal static class PlanText
{
    /// <summary>Writes the swaps in the order of their shutdowns, the cost, where it hurts, and what must be ordered.</summary>
    public static void Write(TextWriter to, PlanDraft draft)
    {
        var (time, input, plan) = (draft.Picture.Time, draft.Board.Input, draft.Plan);
        Line($"Swap plan up to {time.Day(input.HorizonEnd)}: {plan.Placements.Count} chains, {input.Windows.Count} shutdowns");
        if (draft.WhatIf is not null) Line($"What if: this is not the real plan, and cannot be saved");
        foreach (var remark in plan.Remarks.Where(r => r.IsOfLoad)) Tell(remark);
        if (draft.TooLate.Count > 0)
            Line($"Begins after the day of being out of use: place anew {string.Join(", ", draft.TooLate)}");
        if (draft.Homeless.Count > 0) Line($"The shutdown is no longer planned: place anew {string.Join(", ", draft.Homeless)}");
        foreach (var swap in plan.Placements
            .OrderBy(p => p.OutOfUseFrom is null).ThenBy(p => p.Window?.Start ?? DateTimeOffset.MaxValue)
            .ThenBy(p => p.Chain, StringComparer.Ordinal))
        {
            var (row, place) = (draft.Picture.Faces[swap.Chain].Row, draft.PlaceOf(swap.Chain));
            var when = swap.Window is { } window ? time.Moment(window.Start)
                : swap.OutOfUseFrom is { } from ? HardDateWords.OutOfUse(from, time).ToString()
                : "not in the horizon";
            var decided = place.IsNothing ? "" : ", " + Words(place.Placing);
            var note = place.Note.Length > 0 ? $": {place.Note}" : "";
            var cause = draft.Picture.Faces[swap.Chain].LimitedBy;
            var limit = cause.IsEmpty ? "its limit" : $"the limit of its {cause}";
            var percent = swap.Own.ProbabilityPast * 100;
            Line($"  {when,-18} {row.Line}, {swap.Chain}: risk of passing {limit} {percent:0} %{decided}{note}");
            Line($"      {Kit(KitJson.Of(draft.Picture.Faces[swap.Chain], TakesSprockets(swap.Chain)), row.HoldsLoad)}");
        }

        if (plan.Placements.Any(p => draft.Picture.Faces[p.Chain].Row.HoldsLoad))
            Line($"Caution: {Caution.LiftingInBrief} No plan and no date releases it.");
        var money = input.Costs.Money;
        var (kept, byDueDate) = (draft.AsItIs.Cost.Total, draft.ByDueDate.Cost.Total);
        Line($"Expected cost {plan.Cost.Total:#,0} {money}; as it is {kept:#,0}, by earliest due date {byDueDate:#,0}");
        if (draft.Proposal is { } proven) Line($"At most {proven.Gap * 100:0.0} % above the best plan");
        foreach (var remark in plan.Remarks.Where(r => !r.IsOfLoad)) Tell(remark);
        var shortenings = PlannedShortening.LeftBy(plan, input);
        foreach (var order in OrderList.For(input, plan).Where(o => o.Quantity > 0).OrderBy(o => o.LatestOrder))
        {
            var by = order.LatestOrder is not { } latest ? ""
                : order.TooLateAt(input.Now) ? ", by express"
                : $", by {time.Day(latest)}";
            var joined = shortenings.Where(s => s.Needs.Any(n => n.Part == order.Spare.Part)).Select(s => s.Chain).ToArray();
            var shorten = joined.Length > 0 ? $"; to shorten {string.Join(", ", joined)}" : "";
            Line($"Order {order.Spare.Part.Quantity(order.Quantity)}{by}{shorten}");
        }

        bool TakesSprockets(string chain) => input.Tasks.Single(t => t.Chain == chain).TakesSprockets;

        void Tell(PlanRemark remark) => Line($"{Words(remark.Kind)}: {remark.About}. {remark.Why} {remark.WhatWouldHelp}");

        void Line(FormattableString text) => to.WriteLine(text.ToString(CultureInfo.InvariantCulture));
    }

    private static string Kit(KitJson kit, bool whole) => string.Join("; ", new[]
    {
        whole ? FormattableString.Invariant($"{kit.CutPitches} pitches, whole, with its certificate")
            : FormattableString.Invariant($"cut {kit.CutPitches} pitches, connecting links {kit.ConnectingLinks}, ")
                + FormattableString.Invariant($"offset links {kit.OffsetLinks}"),
        kit.Attachments,
        kit.StoreNumber.Length > 0 ? "store number " + kit.StoreNumber : "",
        kit.SprocketNumber.Length > 0 ? "sprocket number " + kit.SprocketNumber : "",
    }.Where(t => t.Length > 0));

    private static string Words<T>(T value)
        where T : struct, Enum => FileWords.Of(value).Replace('_', ' ');
}
