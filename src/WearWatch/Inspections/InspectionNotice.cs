using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Inspections;

/// <summary>The notice of what looks have found and nobody has put in order yet.</summary>
public static class InspectionNotice
{
    /// <summary>The notice; null when nothing stands.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="looks">Its looks in the order in which they were taken.</param>
    /// <param name="events">What happened to it, in order: a new chain or wheel settles what was found at the old one.</param>
    public static Notice? Of(ChainCard card, IReadOnlyList<Inspection> looks, IReadOnlyList<ChainEvent> events)
    {
        var standing = Inspection.Standing(
            looks, Last(events, ChainEventKind.Replacement) ?? card.FittedAt, Last(events, ChainEventKind.SprocketReplaced))
            .Select(s => (s.Finding, s.Since, Point: card.Family.CheckPoint(s.Finding.Point, card.HoldsLoad)))
            // What stops a chain that holds a load is told by its register, until a competent person releases it.
            .Where(s => s.Point is not null && !(card.HoldsLoad && s.Point.StopsTheChain))
            .OrderByDescending(s => s.Point!.StopsTheChain).ToList();
        if (standing.Count == 0) return null;
        var found = standing.Select(s =>
            s.Finding.Note.Length > 0
                ? Phrase.Of($"{s.Point!.Ask} (seen first on {s.Since}, {s.Finding.Note})")
                : $"{s.Point!.Ask} (seen first on {s.Since})");
        return new Notice(
            NoticeKind.FoundByLook, standing.Any(s => s.Point!.StopsTheChain), $"{Phrase.Join("; ", found)}.",
            Phrase.Join(" ", standing.Select(s => s.Point!.Advice).Distinct()));
    }

    private static DateTimeOffset? Last(IReadOnlyList<ChainEvent> events, ChainEventKind kind) =>
        events.LastOrDefault(e => e.Kind == kind)?.At;
}
