namespace WearWatch.Drives;

/// <summary>How evenly the driven machine pulls.</summary>
public enum LoadKind
{
    /// <summary>Evenly.</summary>
    Smooth,

    /// <summary>With some impact.</summary>
    SomeImpact,

    /// <summary>With high impact.</summary>
    HighImpact,
}
