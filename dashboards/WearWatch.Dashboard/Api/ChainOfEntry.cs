using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// Which chain an entry is about: the one of its id, whatever it is called by now; else the one of its name. A phone may send an
/// entry hours after its chain was renamed.
/// </summary>
internal static class ChainOfEntry
{
    /// <summary>The chain's name as the register has it; without an id that is there, the name as told.</summary>
    public static async Task<string?> NameAsync(
        this IDbContextFactory<WearDb> databases, int? chainId, string? told, CancellationToken ct)
    {
        if (chainId is not { } id) return told;
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Chains.Where(c => c.Id == id).Select(c => c.Name).SingleOrDefaultAsync(ct) ?? told;
    }
}
