namespace WearWatch.SensorSim.Plant;

/// <summary>How much abrasive dust reaches a chain.</summary>
internal enum Dust
{
    /// <summary>An enclosed drive.</summary>
    Clean,

    /// <summary>Ordinary mill air.</summary>
    Moderate,

    /// <summary>Dust, sand or bark lies on the chain.</summary>
    Heavy,
}
