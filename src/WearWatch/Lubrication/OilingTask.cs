namespace WearWatch.Lubrication;

/// <summary>What a person has to do so that a chain's joints do not dry.</summary>
public enum OilingTask
{
    /// <summary>Nothing is foreseen: the chain runs dry, or how it is oiled is not known.</summary>
    None,

    /// <summary>Apply oil by hand.</summary>
    OilByHand,

    /// <summary>See that the automatic oiler, bath or oil stream does its work.</summary>
    CheckOiler,
}
