using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Tracking;

/// <summary>Concludes the states of lifting chains and keeps them, within the transaction of a review.</summary>
/// <remarks>It is read in that transaction, so that of two reviews at a time none keeps an older state over a newer.</remarks>
internal static class LiftingKeeping
{
    /// <summary>Gives each chain that holds a load its state.</summary>
    /// <returns>
    /// The chains, those that hold a load with their state; those of which the kept state changed; and the others of their
    /// sets: what condemns one of a set, or replaces it, tells of all.
    /// </returns>
    public static async Task<(IReadOnlyList<ReviewedChain> Chains, IReadOnlySet<int> Changed, IReadOnlySet<int> Mates)> KeepAsync(
        WearDb db, IReadOnlyList<ReviewedChain> made, TimeZoneInfo zone, DateTimeOffset now, CancellationToken ct)
    {
        int[] all = [.. made.Select(m => m.Raw.Id)];
        int[] lifting = [.. made.Where(m => m.Raw.Card.HoldsLoad).Select(m => m.Raw.Id)];
        var kept = await db.LiftingStates.Where(s => all.Contains(s.ChainId)).ToDictionaryAsync(s => s.ChainId, ct);
        if (lifting.Length == 0 && kept.Count == 0) return (made, new HashSet<int>(), new HashSet<int>());
        var rows = await LiftingRows.LoadAsync(db, lifting, zone, ct);
        var (changed, mates) = (new HashSet<int>(), new HashSet<int>());
        var chains = made.Select(chain =>
        {
            var row = kept.GetValueOrDefault(chain.Raw.Id);
            if (!chain.Raw.Card.HoldsLoad)
            {
                if (row is not null) db.LiftingStates.Remove(row);
                return chain;
            }

            var facts = rows.FactsOf(chain);
            var state = LiftingState.Of(facts, now);
            if (row is null) db.LiftingStates.Add(row = new LiftingStateRow { ChainId = chain.Raw.Id });
            row.Take(state);
            var isNews = db.Entry(row).State is EntityState.Added or EntityState.Modified;
            if (isNews) changed.Add(chain.Raw.Id);
            mates.UnionWith(isNews ? rows.MatesOf(chain.Raw.Id) : rows.OlderMatesOf(chain.Raw.Id, facts.ReplacedAt));
            return chain with { Lifting = state };
        }).ToList();
        return (chains, changed, mates);
    }
}
