namespace WearWatch.Chains.Links;

/// <summary>What is measured of a round link; each has a limit of its own and none stands for another.</summary>
public enum LinkMeasure
{
    /// <summary>Inner length of one link.</summary>
    OneLink,

    /// <summary>Length over several links, 11 or the maker's number.</summary>
    SeveralLinks,

    /// <summary>Mean of two diameters at right angles in the crown, where two links bear on each other.</summary>
    MeanDiameter,

    /// <summary>The smaller of the two diameters: a law may limit it at any point.</summary>
    ThinnestDiameter,
}
