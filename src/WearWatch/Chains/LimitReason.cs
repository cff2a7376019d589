namespace WearWatch.Chains;

/// <summary>Why a limit is what it is.</summary>
public enum LimitReason
{
    /// <summary>The general limit of the chain's kind.</summary>
    General,

    /// <summary>The largest sprocket: a long chain climbs its teeth, the sooner the more teeth it has.</summary>
    SprocketTeeth,

    /// <summary>Fixed centres: nothing takes up the slack.</summary>
    FixedCentres,

    /// <summary>Chains that run in parallel and must stay alike.</summary>
    ParallelStrands,

    /// <summary>What is left of the take-up's travel.</summary>
    TakeUpTravel,

    /// <summary>Timing or positioning.</summary>
    Timing,

    /// <summary>A chain that lifts.</summary>
    Lifting,

    /// <summary>The plant set it itself.</summary>
    SetByPlant,

    /// <summary>A high-performance drive.</summary>
    HighPerformance,
}
