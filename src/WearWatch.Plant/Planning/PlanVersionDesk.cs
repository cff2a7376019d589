using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Puts plans aside under a name, and takes their approval.</summary>
/// <remarks>Each answer is empty when it is done, else it says why not.</remarks>
public sealed class PlanVersionDesk(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>A longer name is a slip.</summary>
    public const int LongestName = 80;

    /// <summary>All of them, the newest first.</summary>
    public async Task<IReadOnlyList<PlanVersion>> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await db.PlanVersions.AsNoTracking().OrderByDescending(v => v.Id).ToListAsync(ct);
        return rows.ConvertAll(v => new PlanVersion(v));
    }

    /// <summary>One of them; null when there is none of that number.</summary>
    public async Task<PlanVersion?> FindAsync(long id, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var row = await db.PlanVersions.AsNoTracking().SingleOrDefaultAsync(v => v.Id == id, ct);
        return row is null ? null : new PlanVersion(row);
    }

    /// <summary>Puts the board as it stands aside. It need not be the saved plan.</summary>
    public async Task<Phrase> SaveAsync(string name, PlanDraft draft, string by, CancellationToken ct)
    {
        if (name.Trim() is not { Length: > 0 and <= LongestName } called)
            return $"Give it a name of at most {LongestName} letters.";
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.PlanVersions.AnyAsync(v => v.Name == called, ct)) return $"There is a version '{called}' already.";
        db.PlanVersions.Add(new PlanVersionRow
        {
            Name = called,
            SavedBy = by,
            SavedAt = clock.GetUtcNow(),
            Cost = draft.Plan.Cost.Total,
            Swaps = PlanVersion.SwapsOf(draft),
        });
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return Phrase.None;
    }

    /// <summary>Approves it; once.</summary>
    public async Task<Phrase> ApproveAsync(long id, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var row = await db.PlanVersions.SingleAsync(v => v.Id == id, ct);
        if (row.ApprovedAt is not null) return $"{row.ApprovedBy} has approved it before.";
        (row.ApprovedBy, row.ApprovedAt) = (by, clock.GetUtcNow());
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return Phrase.None;
    }
}
