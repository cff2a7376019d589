namespace WearWatch.Chains;

/// <summary>Whose law a plant says it stands under. WearWatch presets by it; local law and the competent person decide.</summary>
public enum LawRegion
{
    /// <summary>Nobody has said.</summary>
    NotSet,

    /// <summary>The European Union, where no member state's own rule is kept here.</summary>
    EuropeanUnion,

    /// <summary>The United Kingdom.</summary>
    UnitedKingdom,

    /// <summary>Germany.</summary>
    Germany,

    /// <summary>France.</summary>
    France,

    /// <summary>The United States, federal rules.</summary>
    UnitedStates,

    /// <summary>Australia.</summary>
    Australia,
}
