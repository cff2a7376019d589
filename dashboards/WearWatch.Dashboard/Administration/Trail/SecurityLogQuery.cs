using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Trail;

/// <summary>Asks for lines of the security log, the newest first.</summary>
public sealed class SecurityLogQuery(IDbContextFactory<WearDb> databases)
{
    /// <summary>Lines that a page shows; the file has all.</summary>
    public const int Shown = 200;

    /// <summary>The newest lines, of one kind or of all.</summary>
    public async Task<IReadOnlyList<SecurityEventRow>> AskAsync(
        SecurityEventKind? kind, int most = Shown, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.SecurityEvents.AsNoTracking().Where(l => kind == null || l.Kind == kind).OrderByDescending(l => l.Id)
            .Take(most).ToListAsync(ct);
    }
}
