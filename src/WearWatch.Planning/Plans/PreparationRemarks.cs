namespace WearWatch.Planning.Plans;

/// <summary>What a plan says of swaps that cannot be prepared, and of chains that have to be measured first.</summary>
internal static class PreparationRemarks
{
    public static IEnumerable<PlanRemark> Of(PlanCase plan, int[] placing) =>
        PartsThatCannotCome(plan, placing).Concat(ChainsToMeasure(plan, placing));

    private static IEnumerable<PlanRemark> PartsThatCannotCome(PlanCase plan, int[] placing) =>
        from supply in plan.Supplies
        let missing = PlanCosting.MissingQuantity(plan, supply, placing)
        where missing > 0
        select new PlanRemark(
            PlanRemarkKind.PartsCannotCome, supply.Part.ToString(), supply.ExpressArrives, missing,
            $"{missing:#,0} {supply.Part.Unit} are missing for swaps before {supply.ExpressArrives.Day()}. "
                + $"Not even an express order of today arrives earlier.",
            $"Move a swap that needs them to a later shutdown, or say in the stock what comes from elsewhere.")
        {
            About = supply.Part.Words,
        };

    private static IEnumerable<PlanRemark> ChainsToMeasure(PlanCase plan, int[] placing) =>
        from u in Enumerable.Range(0, placing.Length)
        where placing[u] == PlanCase.Later && plan.Units[u].MeasureFirst && plan.OutOfUseFrom[u] is null
            && plan.Fixed[u] != PlanCase.Later
        from task in plan.Units[u].Tasks
        select new PlanRemark(
            PlanRemarkKind.MeasureFirst, task.Chain, null, plan.OwnLater[u].ProbabilityPast,
            $"Nobody has measured it. By its class alone it passes its limit with {plan.OwnLater[u].ProbabilityPast:P0} "
                + $"before its next chance.",
            $"Measure it on the next round; then it is planned by its own wear.");
}
