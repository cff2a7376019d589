using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Whether the plant has people yet. Until it has, the dashboard is open, to this machine only.</summary>
public sealed class SetUp(IDbContextFactory<WearDb> database)
{
    private volatile bool done; // people are never deleted, so a yes stays

    /// <summary>Whether anybody is set up.</summary>
    public async ValueTask<bool> IsDoneAsync(CancellationToken ct = default)
    {
        if (done) return true;
        await using var db = await database.CreateDbContextAsync(ct);
        return done = await db.People.AnyAsync(ct);
    }

}
