using WearWatch.Chains.Families;

namespace WearWatch.Planning.Supply;

/// <summary>So much of a part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">How many, or of a chain how many pitches; at least one.</param>
public sealed record PartNeed(Part Part, int Quantity)
{
    /// <summary>What a chain takes from the shelf.</summary>
    /// <param name="cut">How it is made up.</param>
    /// <param name="chainType">Its type, after which the parts are called.</param>
    public static IReadOnlyList<PartNeed> Of(ChainCut cut, string chainType) =>
    [
        .. new[]
        {
            new PartNeed(new Part(PartKind.Chain, chainType), cut.CutPitches),
            new PartNeed(new Part(PartKind.ConnectingLink, chainType), cut.ConnectingLinks),
            new PartNeed(new Part(PartKind.OffsetLink, chainType), cut.OffsetLinks),
        }.Where(need => need.Quantity > 0),
    ];
}
