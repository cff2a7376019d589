namespace WearWatch.SensorSim.Plant;

/// <summary>How a chain gets its oil.</summary>
internal enum Lubrication
{
    /// <summary>An automatic oiler that works.</summary>
    Auto,

    /// <summary>By hand, when it is due.</summary>
    Manual,

    /// <summary>By hand, but too seldom.</summary>
    Poor,

    /// <summary>Not at all.</summary>
    Dry,
}
