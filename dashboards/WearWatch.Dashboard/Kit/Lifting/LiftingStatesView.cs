namespace WearWatch.Dashboard.Kit.Lifting;

/// <summary>What is said of each chain that lifts, by its name.</summary>
/// <param name="ByChain">The chains that lift; another is not among them.</param>
public sealed record LiftingStatesView(IReadOnlyDictionary<string, LiftingNow> ByChain)
{
    /// <summary>Of no chain.</summary>
    public static LiftingStatesView None { get; } = new(new Dictionary<string, LiftingNow>());

    /// <summary>What is said of a chain; null for one that does not lift.</summary>
    public LiftingNow? this[string chain] => ByChain.GetValueOrDefault(chain);
}
