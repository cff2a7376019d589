namespace WearWatch.Chains.Families;

/// <summary>Points of a checklist that conveyor chains have besides the common ones. Source: docs/references.md [27].</summary>
internal static class ConveyorPoints
{
    private const string Read = "docs/references.md [27]";

    public static CheckPoint Pins { get; } = new(
        InspectionPoint.PinWear,
        $"Where a joint is open: pins are worn to 0.975 of their diameter if case-hardened, to 0.85 if through-hardened",
        $"Replace the chain, or pins and bushes together as its maker says.", Read);

    /// <summary>The source leaves open whether 40 % of the wall are worn or left; what is found sooner is asked.</summary>
    public static CheckPoint Bushes { get; } = new(
        InspectionPoint.BushWear, $"Where a joint is open: the bush's wall is worn by 40 %",
        $"Replace the chain, or pins and bushes together as its maker says. The source leaves open whether 40 % are worn or "
            + $"left.",
        Read);

    public static CheckPoint Barrels { get; } = new(
        InspectionPoint.RollerWear, $"Barrels are worn thin or flat where they meet the teeth",
        $"Replace the chain; look at the teeth's gaps.", CommonPoints.Practice);

    public static CheckPoint Teeth { get; } = CommonPoints.Teeth with
    {
        Ask = $"Teeth are hooked or thinned, or their roots worn by 3 to 10 mm, by the size of the chain",
        Source = "docs/references.md [27], [36]",
    };

    public static CheckPoint Plates { get; } = CommonPoints.Plates with
    {
        Advice = $"Look for sprockets out of line or rubbing guides. Worn by a third of their thickness or height: replace chain "
            + $"and sprockets together.",
        Source = "docs/references.md [27], [28]",
    };

    /// <summary>Those of such a chain that lifts or holds a load: neither pins nor bushes are renewed in it.</summary>
    public static IReadOnlyList<CheckPoint> Lifting { get; } =
    [
        .. HoistPoints.All, LiftingPoints.ToDiscard(Pins), LiftingPoints.ToDiscard(Bushes),
    ];
}
