namespace WearWatch.Chains.Parts;

/// <summary>What wears beside the elongation and is measured in millimetres; each has a limit of its own.</summary>
/// <remarks>The names are kept in files and in the memory.</remarks>
public enum WearPart
{
    /// <summary>Height of a plate where it runs over a wheel or a guide.</summary>
    PlateHeight,

    /// <summary>Diameter of a roller.</summary>
    RollerDiameter,

    /// <summary>Diameter of a pin in an open joint.</summary>
    PinDiameter,

    /// <summary>Outer diameter of a bush.</summary>
    BushDiameter,

    /// <summary>How deep the root between two teeth of a sprocket is worn.</summary>
    ToothRoot,

    /// <summary>How far a tooth is hooked: the depth of the hollow in its flank.</summary>
    ToothHook,

    /// <summary>How far the slack side moves at mid-span in all.</summary>
    Sag,

    /// <summary>How far the sprockets stand out of line.</summary>
    Alignment,
}
