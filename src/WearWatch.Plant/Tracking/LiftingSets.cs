using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Storage;

namespace WearWatch.Plant.Tracking;

/// <summary>Which lifting chains work together, with what of each decides about the others of its set.</summary>
internal sealed class LiftingSets
{
    private readonly IReadOnlyDictionary<int, string> setOf;
    private readonly ILookup<string, LiftingMate> bySet;

    private LiftingSets(IReadOnlyDictionary<int, string> setOf, IEnumerable<LiftingMate> mates) =>
        (this.setOf, bySet) = (setOf, mates.ToLookup(mate => setOf[mate.Id]));

    /// <summary>Loads the sets that chains belong to, by the newest entries of the register.</summary>
    public static async Task<LiftingSets> LoadAsync(WearDb db, IReadOnlyCollection<int> ids, CancellationToken ct)
    {
        var cards = ids.Count == 0 ? [] : await db.LiftingCards.AsNoTracking()
            .Where(c => c.ChainSet != "" && !db.LiftingCards.Any(newer => newer.ChainId == c.ChainId && newer.Id > c.Id))
            .Select(c => new { c.ChainId, c.ChainSet }).ToListAsync(ct);
        var asked = cards.Where(c => ids.Contains(c.ChainId)).Select(c => c.ChainSet).ToHashSet();
        var setOf = cards.Where(c => asked.Contains(c.ChainSet)).ToDictionary(c => c.ChainId, c => c.ChainSet);
        if (setOf.Count == 0) return new LiftingSets(setOf, []);
        int[] all = [.. setOf.Keys];
        var names = await db.Chains.Where(c => all.Contains(c.Id)).Select(c => new { c.Id, c.Name }).ToListAsync(ct);
        var states = await db.LiftingStates.AsNoTracking().Where(s => all.Contains(s.ChainId)).ToDictionaryAsync(
            s => s.ChainId, ct);
        var events = (await db.Events.AsNoTracking().Where(e => all.Contains(e.ChainId)).OrderBy(e => e.Id).ToListAsync(ct))
            .ToLookup(e => e.ChainId);
        return new LiftingSets(setOf, names.OrderBy(n => n.Name, StringComparer.Ordinal).Select(n => new LiftingMate(
            n.Id, n.Name, states.GetValueOrDefault(n.Id)?.ToState().IsCondemned == true,
            StandingRows.Standing([.. events[n.Id]]).LastOrDefault(e => e.Kind == ChainEventKind.Replacement) is { } replaced
                ? replaced.At ?? replaced.ReceivedAt
                : null)));
    }

    /// <summary>The other chains of a chain's set, by their names.</summary>
    public IEnumerable<LiftingMate> MatesOf(int id) =>
        setOf.TryGetValue(id, out var set) ? bySet[set].Where(mate => mate.Id != id) : [];
}
