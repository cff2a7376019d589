using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>Holds the chains that run together against each other: parallel strands, pairs and sets of a lift.</summary>
public static class RunningGroups
{
    /// <summary>Gives each chain of a group the difference to the chain of it that differs most.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="made">What a review has concluded; the others of a group are taken as their kept forecasts have them.</param>
    /// <param name="ct">Ends it.</param>
    internal static async Task<IReadOnlyList<ReviewedChain>> CompareAsync(
        WearDb db, IReadOnlyList<ReviewedChain> made, CancellationToken ct)
    {
        var groupOf = await GroupsAsync(db, ct);
        var asked = made.Where(m => groupOf.ContainsKey(m.Raw.Id)).Select(m => groupOf[m.Raw.Id]).ToHashSet();
        if (asked.Count == 0) return made;
        int[] ids = [.. groupOf.Where(g => asked.Contains(g.Value)).Select(g => g.Key)];
        var rows = await (from chain in db.Chains
                          join forecast in db.Forecasts on chain.Id equals forecast.ChainId
                          where forecast.IsLatest && ids.Contains(chain.Id)
                          select new { chain, forecast }).AsNoTracking().ToListAsync(ct);
        var kept = rows.Select(r => (r.chain.Id, Member: Of(r.chain, r.forecast))).Where(r => r.Member is not null)
            .ToDictionary(r => r.Id, r => r.Member!);
        var limits = rows.ToDictionary(r => r.chain.Id, r => r.chain.GroupDifferenceMm);
        foreach (var chain in made.Where(m => groupOf.ContainsKey(m.Raw.Id)))
        {
            if (Of(chain) is { } now) kept[chain.Raw.Id] = now;
            else kept.Remove(chain.Raw.Id);
            limits[chain.Raw.Id] = chain.Raw.Card.GroupDifferenceMm;
        }

        return [.. made.Select(chain => groupOf.TryGetValue(chain.Raw.Id, out var group) && kept.ContainsKey(chain.Raw.Id)
            ? chain with { Group = GroupDifference.Of(MembersOf(group), LimitOf(group)) }
            : chain)];

        List<GroupMember> MembersOf((string Line, string Name) group) =>
            [.. kept.Where(k => groupOf[k.Key] == group).OrderBy(k => k.Key).Select(k => k.Value)];

        double? LimitOf((string Line, string Name) group) => limits.Where(l => groupOf[l.Key] == group).Min(l => l.Value);
    }

    /// <summary>The names of the chains that run together with each chain of a group.</summary>
    public static async Task<IReadOnlyDictionary<int, IReadOnlyList<string>>> MatesAsync(WearDb db, CancellationToken ct)
    {
        var groupOf = await GroupsAsync(db, ct);
        int[] ids = [.. groupOf.Keys];
        var names = await db.Chains.Where(c => ids.Contains(c.Id)).ToDictionaryAsync(c => c.Id, c => c.Name, ct);
        return groupOf.ToDictionary(g => g.Key, g => (IReadOnlyList<string>)[.. groupOf
            .Where(other => other.Key != g.Key && other.Value == g.Value).Select(other => names[other.Key])
            .Order(StringComparer.Ordinal)]);
    }

    /// <summary>Which chains run together: the parallel strands of a line, and the sets of the lifting register.</summary>
    private static async Task<Dictionary<int, (string Line, string Name)>> GroupsAsync(WearDb db, CancellationToken ct)
    {
        var groups = (await (from terms in db.SwapTerms
                             join chain in db.Chains on terms.ChainId equals chain.Id
                             where terms.ParallelGroup != ""
                             select new { chain.Id, chain.Line, terms.ParallelGroup }).ToListAsync(ct))
            .ToDictionary(g => g.Id, g => (g.Line, g.ParallelGroup));
        foreach (var set in await db.LiftingCards
            .Where(c => c.ChainSet != "" && !db.LiftingCards.Any(newer => newer.ChainId == c.ChainId && newer.Id > c.Id))
            .Select(c => new { c.ChainId, c.ChainSet }).ToListAsync(ct))
            groups[set.ChainId] = ("", "set " + set.ChainSet);
        return groups;
    }

    private static GroupMember? Of(ChainRow chain, ForecastRow forecast) => forecast.ElongationPct is not { } elongation
        ? null
        : new GroupMember(
            chain.Name, elongation + forecast.RatePctPer1000H * (forecast.HoursNow - forecast.HoursAtLastReading) / 1000,
            forecast.ElongationSdPct ?? 0, forecast.RatePctPer1000H, chain.Pitches * chain.PitchMm);

    private static GroupMember? Of(ReviewedChain made) => made.Assessment is not { ElongationPercent: { } elongation } chain
        ? null
        : new GroupMember(
            chain.Card.Name,
            elongation + chain.RatePercentPer1000Hours * (chain.HoursNow - chain.HoursAtLastReading) / 1000,
            chain.ElongationStandardDeviationPercent ?? 0, chain.RatePercentPer1000Hours,
            chain.Card.Pitches * chain.Card.PitchMm);
}
