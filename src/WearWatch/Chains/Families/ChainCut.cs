namespace WearWatch.Chains.Families;

/// <summary>How a chain of a given length is made up: what is cut from the pack, and the links that close it.</summary>
/// <remarks>Source: common practice.</remarks>
/// <param name="CutPitches">Pitches cut from the pack.</param>
/// <param name="ConnectingLinks">Connecting links, a pitch each where links alternate.</param>
/// <param name="OffsetLinks">Offset links, a pitch each.</param>
public sealed record ChainCut(int CutPitches, int ConnectingLinks, int OffsetLinks)
{
    /// <summary>A chain that is closed by a pin of its own or hangs on its anchors' pins: cut to any number.</summary>
    internal static ChainCut Whole(int pitches) => new(pitches, 0, 0);

    /// <summary>A chain in which inner and outer links alternate.</summary>
    /// <remarks>
    /// A cut that begins and ends with an inner link has an odd number of pitches; one connecting link (an outer one) closes
    /// it to an even number. An odd number takes one offset link beside it, which is inner at one end and outer at the other.
    /// </remarks>
    internal static ChainCut OfAlternatingLinks(int pitches)
    {
        if (pitches < 3) return Whole(pitches);
        return int.IsEvenInteger(pitches) ? new ChainCut(pitches - 1, 1, 0) : new ChainCut(pitches - 2, 1, 1);
    }
}
