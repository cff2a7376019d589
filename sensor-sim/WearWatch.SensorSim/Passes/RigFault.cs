namespace WearWatch.SensorSim.Passes;

/// <summary>What is wrong with a pair of sensors.</summary>
/// <param name="MissedShare">Share of pulses missed beyond the usual.</param>
/// <param name="DoubledShare">Share of pulses that come twice.</param>
/// <param name="MovedByMm">By how far the second sensor was moved, in millimetres.</param>
/// <param name="RunsBackwards">Whether the chain runs backwards.</param>
public readonly record struct RigFault(
    double MissedShare = 0, double DoubledShare = 0, double MovedByMm = 0, bool RunsBackwards = false)
{
    /// <summary>Whether the sensors' wires are swapped: each reports as the other one.</summary>
    public bool AreSwapped { get; init; }

    /// <summary>Of which rollers the sensors tell.</summary>
    public RollersSeen Seen { get; init; }
}
