namespace WearWatch.Dashboard.Overview.ChainList;

/// <summary>By what the list of chains is sorted.</summary>
public enum ChainSort
{
    /// <summary>The planner's date; chains without one last.</summary>
    Early,
    /// <summary>The day by which it is shortened or tensioned anew; chains without one last.</summary>
    Tension,
    Planned,
    Name,
    Line,
    Type,
    Elongation,
    Rate,
    Limit,
    Lubrication,
    LastReading,
}
