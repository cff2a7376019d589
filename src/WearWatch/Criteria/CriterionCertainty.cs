namespace WearWatch.Criteria;

/// <summary>How sure a criterion is. It stands on the screen with it.</summary>
public enum CriterionCertainty
{
    /// <summary>Read in a regulation, an authority's paper or a maker's instruction.</summary>
    Published,

    /// <summary>Worked out from figures that were read.</summary>
    Derived,

    /// <summary>Recalled and not read.</summary>
    FromMemory,
}
