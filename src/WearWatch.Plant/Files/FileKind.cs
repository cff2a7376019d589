namespace WearWatch.Plant.Files;

/// <summary>What is in a file, told by its header row.</summary>
public enum FileKind
{
    /// <summary>It cannot be told.</summary>
    Unknown,

    /// <summary>The register of chains.</summary>
    Chains,

    /// <summary>Readings.</summary>
    Readings,

    /// <summary>Events.</summary>
    Events,

    /// <summary>Measures of the links of round-link chains.</summary>
    LinkMeasures,

    /// <summary>Readings of parts beside the elongation.</summary>
    PartReadings,

    /// <summary>What another system says of the work orders of planned swaps.</summary>
    WorkOrders,
}
