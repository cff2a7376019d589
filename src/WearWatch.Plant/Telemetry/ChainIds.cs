using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Plant.Telemetry;

/// <summary>The rows of chains by name. Names are for ever, so what was found once is remembered.</summary>
public sealed class ChainIds
{
    private readonly ConcurrentDictionary<string, int> known = new(StringComparer.Ordinal);

    /// <summary>Finds chains; those that are not registered are not in the answer.</summary>
    public async Task<IReadOnlyDictionary<string, int>> FindAsync(
        WearDb db, IEnumerable<string> names, CancellationToken ct = default)
    {
        var wanted = names.Distinct(StringComparer.Ordinal).ToList();
        var missing = wanted.FindAll(n => !known.ContainsKey(n));
        if (missing.Count > 0)
            foreach (var chain in await db.Chains.Where(c => EF.Parameter(missing).Contains(c.Name))
                .Select(c => new { c.Name, c.Id }).ToListAsync(ct))
                known[chain.Name] = chain.Id;
        return wanted.Where(known.ContainsKey).ToDictionary(n => n, n => known[n], StringComparer.Ordinal);
    }
}
