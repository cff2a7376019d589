namespace WearWatch.Chains;

/// <summary>How well a chain's joints are kept in oil, worst last.</summary>
public enum LubricationState
{
    /// <summary>An automatic oiler, bath or oil stream that works.</summary>
    Auto,

    /// <summary>Oiled by hand, when it is due.</summary>
    Manual,

    /// <summary>Oiled too seldom, or with the wrong or dirty oil.</summary>
    Poor,

    /// <summary>Not oiled at all.</summary>
    Dry,
}

/// <summary>How much abrasive dust reaches the chain.</summary>
public enum DustLevel
{
    /// <summary>Enclosed, or a clean room.</summary>
    Clean,

    /// <summary>Ordinary plant air.</summary>
    Moderate,

    /// <summary>Dust lies on the chain.</summary>
    Heavy,
}

/// <summary>
/// What a chain has to stand at its position. What is not known is null, and the fleet model then expects the average.
/// </summary>
public sealed record Duty
{
    /// <summary>Bearing pressure in the joint over the permissible one; 0.5 is an ordinary drive.</summary>
    public double? RelativeLoad { get; init; }

    /// <summary>Chain speed in metres a second.</summary>
    public double? SpeedMetresPerSecond { get; init; }

    /// <summary>How well the joints are kept in oil.</summary>
    public LubricationState? Lubrication { get; init; }

    /// <summary>How much abrasive dust reaches the chain.</summary>
    public DustLevel? Dust { get; init; }

    /// <summary>Temperature of the surroundings in degrees Celsius.</summary>
    public double? AmbientC { get; init; }

    /// <summary>
    /// Running hours since the last oiling, averaged over the hours that it ran. Not told on a card: the recorded oilings say it
    /// (<see cref="Lubrication.DutySeen"/>).
    /// </summary>
    public double? HoursSinceOiling { get; init; }
}
