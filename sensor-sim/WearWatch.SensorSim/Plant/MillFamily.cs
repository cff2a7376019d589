namespace WearWatch.SensorSim.Plant;

/// <summary>The kinds of chain that run in the mill.</summary>
internal enum MillFamily
{
    /// <summary>Short-pitch roller chain, ISO 606 and ASME B29.1.</summary>
    Roller,

    /// <summary>Double-pitch roller chain, ISO 1275.</summary>
    DoublePitch,

    /// <summary>Conveyor chain, ISO 1977.</summary>
    Conveyor,

    /// <summary>Leaf chain on a lift, ISO 4347.</summary>
    Leaf,

    /// <summary>Welded steel chain, ASME B29.200.</summary>
    WeldedSteel,

    /// <summary>Round-steel link chain, DIN 22252.</summary>
    RoundLink,
}
