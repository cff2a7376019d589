using WearWatch.Chains.Families;
using WearWatch.Chains.Links;

namespace WearWatch.Chains;

/// <summary>What the card of a round-link chain says of its links.</summary>
public static class CardLinks
{
    extension(ChainCard card)
    {
        /// <summary>
        /// Size and limits of a round-link chain's links; null for other kinds, and where the diameter is not known. It is that
        /// of the chain type where the card has none.
        /// </summary>
        public LinkTable? Links => card.HasLinks && LinkTableCheck.Faults(card.LinkEntryOfType, card.PitchMm).Count == 0
            ? LinkTable.Of(card.LinkEntryOfType, card.PitchMm)
            : null;

        /// <summary>What cannot be of the maker's table, by its fields; empty where nothing was copied.</summary>
        public IReadOnlyList<LinkTableFault> LinkFaults => card.LinkEntry == LinkTableEntry.None ? []
            : card.HasLinks ? LinkTableCheck.Faults(card.LinkEntryOfType, card.PitchMm)
            : [new(nameof(LinkTableEntry.DiameterMm), $"Only a chain of round links has a table of links.")];

        /// <summary>Whether it is made of round links, which are measured one by one.</summary>
        public bool HasLinks => card.Family.Measured == MeasuredPoints.LinkEdges;

        private LinkTableEntry LinkEntryOfType => card.LinkEntry.DiameterMm is null
            ? card.LinkEntry with { DiameterMm = ChainCatalogue.Find(card.ChainType)?.LinkDiameterMm?.Value }
            : card.LinkEntry;
    }
}
