namespace WearWatch.Drives;

/// <summary>What drives.</summary>
public enum PrimeMover
{
    /// <summary>An electric motor or a turbine.</summary>
    MotorOrTurbine,

    /// <summary>A combustion engine with hydraulic drive.</summary>
    EngineHydraulic,

    /// <summary>A combustion engine with mechanical drive.</summary>
    EngineMechanical,
}
