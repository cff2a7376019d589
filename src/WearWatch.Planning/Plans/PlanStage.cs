namespace WearWatch.Planning.Plans;

/// <summary>What the planner is doing.</summary>
public enum PlanStage
{
    /// <summary>The cost of each swap in each window is worked out.</summary>
    Costing,

    /// <summary>A first plan is made and improved swap by swap.</summary>
    FirstPlan,

    /// <summary>The best plan is looked for, to the gap or the time limit.</summary>
    Searching,
}
