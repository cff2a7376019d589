using WearWatch.Chains;
using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Swaps;

/// <summary>How a chain of a given length is made up: what is cut from the pack, and the links that close it.</summary>
/// <remarks>
/// Inner and outer links alternate in roller, bush and conveyor chain. A cut that begins and ends with an inner link has an odd number
/// of pitches; one connecting link (an outer one) closes it to an even number. An odd number takes one offset link beside it, which is
/// inner at one end and outer at the other. Chains of links that are all alike are cut to any number. Source: common practice.
/// </remarks>
/// <param name="CutPitches">Pitches cut from the pack.</param>
/// <param name="ConnectingLinks">Connecting links, a pitch each where links alternate.</param>
/// <param name="OffsetLinks">Offset links, a pitch each.</param>
public sealed record ChainCut(int CutPitches, int ConnectingLinks, int OffsetLinks)
{
    /// <summary>How a chain of so many pitches is made up.</summary>
    public static ChainCut For(ChainFamily family, int pitches) => family switch
    {
        ChainFamily.Leaf => new ChainCut(pitches, 0, 0), // ends on the anchors' own pins
        ChainFamily.OffsetLink or ChainFamily.InvertedTooth => new ChainCut(pitches, 0, 0), // closed by a pin of its own
        ChainFamily.RoundLink => new ChainCut(pitches - 1, 1, 0),
        _ when pitches < 3 => new ChainCut(pitches, 0, 0),
        _ => pitches % 2 == 0 ? new ChainCut(pitches - 1, 1, 0) : new ChainCut(pitches - 2, 1, 1),
    };

    /// <summary>What it takes from the shelf.</summary>
    public IReadOnlyList<PartNeed> Needs(string chainType) =>
    [
        .. new[]
        {
            new PartNeed(new Part(PartKind.Chain, chainType), CutPitches),
            new PartNeed(new Part(PartKind.ConnectingLink, chainType), ConnectingLinks),
            new PartNeed(new Part(PartKind.OffsetLink, chainType), OffsetLinks),
        }.Where(need => need.Quantity > 0),
    ];
}
