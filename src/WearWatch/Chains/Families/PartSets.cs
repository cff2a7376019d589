using WearWatch.Chains.Parts;
using WearWatch.Criteria;

namespace WearWatch.Chains.Families;

/// <summary>The parts that kinds of chain have in common, with the limits that were read. Sources: docs/references.md.</summary>
internal static class PartSets
{
    /// <summary>A drive of plates, pins, bushes and rollers on toothed wheels.</summary>
    public static IReadOnlyList<PartRule> OfRollers { get; } =
    [
        Plates, new(WearPart.RollerDiameter), new(WearPart.PinDiameter), new(WearPart.BushDiameter), .. Teeth, Slack,
        new(WearPart.Alignment),
    ];

    /// <summary>The same without rollers.</summary>
    public static IReadOnlyList<PartRule> OfBushes { get; } = [.. OfRollers.Where(r => r.Part is not WearPart.RollerDiameter)];

    /// <summary>A conveyor: its source has limits of its own, and no centre distance limits its slack.</summary>
    public static IReadOnlyList<PartRule> OfConveyors { get; } =
    [
        new(WearPart.PlateHeight)
        {
            Share = 2 / 3.0, Rule = $"conveyor chain: a plate worn by a third of its height", Source = "docs/references.md [27]",
        },
        new(WearPart.RollerDiameter),
        new(WearPart.PinDiameter)
        {
            Share = 0.975,
            Rule = $"case-hardened pins to 0.975 of their diameter; through-hardened ones to 0.85: then set your own",
            Source = "docs/references.md [27]",
        },
        new(WearPart.BushDiameter),
        new(WearPart.ToothRoot)
        {
            Mm = 3, Rule = $"tooth roots worn by 3 to 10 mm, by the size of the chain: the least of it unless you set your own",
            Source = "docs/references.md [27]",
        },
        new(WearPart.ToothHook), new(WearPart.Sag), new(WearPart.Alignment),
    ];

    /// <summary>Plates and pins over sheaves, lifting.</summary>
    public static IReadOnlyList<PartRule> OfLeaves { get; } =
    [
        new(WearPart.PlateHeight)
        {
            Share = 1 - LiftingCriteria.ValueOf("leaf-plate-height") / 100,
            Rule = $"leaf chain: plates worn by 5 % of their height",
            Source = "docs/references.md [30]",
        },
        new(WearPart.PinDiameter), new(WearPart.Alignment),
    ];

    /// <summary>Toothed plates in a toothed wheel.</summary>
    public static IReadOnlyList<PartRule> OfToothedPlates { get; } = [.. Teeth, Slack, new(WearPart.Alignment)];

    /// <summary>Plates hinged on pins, over toothed wheels and strips; no limit of theirs was read.</summary>
    public static IReadOnlyList<PartRule> OfHingedPlates { get; } =
    [
        new(WearPart.PlateHeight), new(WearPart.PinDiameter), .. Teeth, new(WearPart.Sag), new(WearPart.Alignment),
    ];

    /// <summary>What any chain on wheels has, of which nothing more is known.</summary>
    public static IReadOnlyList<PartRule> OfAny { get; } =
        [.. OfRollers.Where(r => r.Part is not WearPart.Sag).Select(r => new PartRule(r.Part)), new(WearPart.Sag)];

    /// <summary>A ring chain: its links have measures of their own.</summary>
    public static IReadOnlyList<PartRule> OfRings { get; } = [new(WearPart.Alignment)];

    private static PartRule Plates => new(WearPart.PlateHeight)
    {
        Share = 0.95,
        Rule = $"a maker's rule for any chain: plates worn by 5 % of their height, chain and sprockets together",
        Source = "docs/references.md [28]",
    };

    private static IEnumerable<PartRule> Teeth => [new(WearPart.ToothRoot), new(WearPart.ToothHook)];

    private static PartRule Slack => new(WearPart.Sag)
    {
        Share = 0.06,
        Rule = $"slack is set to 4 to 6 % of the centre distance; "
            + $"vertical, fast or jolting drives to 2 to 3 %: then set your own",
        Source = "docs/references.md [38]",
    };
}
