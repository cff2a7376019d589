namespace WearWatch.Chains.Families;

/// <summary>What is looked at on a chain and its wheels, besides its length.</summary>
public enum InspectionPoint
{
    /// <summary>Joints that do not bend freely.</summary>
    StiffJoints,

    /// <summary>Cracked plates or links; pins that are turned, proud or missing.</summary>
    CrackedOrTurnedParts,

    /// <summary>Plates worn at their sides or along their edges.</summary>
    PlateWear,

    /// <summary>Rollers or bushes worn thin, cracked or standing still.</summary>
    RollerWear,

    /// <summary>Rust, pitting.</summary>
    Corrosion,

    /// <summary>Joints that are dry, or have a red-brown deposit.</summary>
    DryJoints,

    /// <summary>Teeth that are hooked, thinned or shiny at one side.</summary>
    HookedTeeth,

    /// <summary>Wheels out of line.</summary>
    Alignment,

    /// <summary>Too much or too little sag.</summary>
    Sag,

    /// <summary>Links worn where they touch.</summary>
    LinkContact,

    /// <summary>Anchors, sheaves and their pins.</summary>
    AnchorsAndSheaves,

    /// <summary>Pins worn thin in the joint.</summary>
    PinWear,

    /// <summary>Bushes worn thin in the joint.</summary>
    BushWear,

    /// <summary>Pins that have turned or stand out.</summary>
    TurnedPins,

    /// <summary>Pits of corrosion.</summary>
    Pitting,

    /// <summary>Marks of heat, weld spatter, paint or plating.</summary>
    HeatMarks,

    /// <summary>Nicks and gouges.</summary>
    Nicks,

    /// <summary>Links that are bent, twisted or stretched.</summary>
    DeformedLinks,

    /// <summary>A chain that is twisted or bowed over a stretch.</summary>
    TwistOrBow,

    /// <summary>The hook.</summary>
    Hook,

    /// <summary>The tag, or the mark of the device.</summary>
    Tag,

    /// <summary>The coating of a coated chain.</summary>
    Coating,

    /// <summary>Signs of overload.</summary>
    Overload,

    /// <summary>Any other damage that raises a doubt.</summary>
    Doubt,

    /// <summary>Joints that are stiff by dirt, and bend again once they are cleaned and oiled.</summary>
    DirtyJoints,
}
