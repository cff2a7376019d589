namespace WearWatch.Planning.Plans;

/// <summary>What the planner is doing.</summary>
public enum PlanStage
{
    /// <summary>The cost of each swap in each window is worked out.</summary>
    Costing,

    /// <summary>The best plan is looked for.</summary>
    Searching,

    /// <summary>How good a plan can be is proven, to the gap or the time limit.</summary>
    Proving,
}
