using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>Asks for the mappings of foreign signals, each in the version that holds.</summary>
public sealed class MappingsQuery(IDbContextFactory<WearDb> databases)
{
    /// <summary>The mappings by name.</summary>
    public async Task<IReadOnlyList<SignalMappingRow>> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.LatestMappings.OrderBy(m => m.Name).ToListAsync(ct);
    }
}
