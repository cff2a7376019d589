namespace WearWatch.Chains.Links;

/// <summary>What a round-link chain is used in: limits differ between them.</summary>
public enum LinkUse
{
    /// <summary>A powered hoist.</summary>
    PoweredHoist,

    /// <summary>A hoist worked by hand.</summary>
    HandHoist,

    /// <summary>A sling under the hook.</summary>
    Sling,
}
