namespace WearWatch.Criteria;

/// <summary>Which chains that lift or hold a load a criterion is for. A limit is never borrowed from another family.</summary>
public enum CriterionFamily
{
    /// <summary>Leaf chain of fork trucks, telehandlers and counterweights.</summary>
    Leaf,

    /// <summary>Roller chain of a hoist.</summary>
    HoistRoller,

    /// <summary>Round-link chain of a hoist.</summary>
    HoistLink,

    /// <summary>Chain sling below the hook.</summary>
    Sling,

    /// <summary>All of them.</summary>
    Any,
}
