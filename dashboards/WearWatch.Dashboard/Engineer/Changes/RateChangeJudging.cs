using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.Changes;

/// <summary>Keeps what a person found when they looked at a chain that was said to wear faster.</summary>
public sealed class RateChangeJudging(IDbContextFactory<WearDb> databases, PlantNews news, TimeProvider clock)
{
    /// <summary>Keeps a judgement. A false alarm ends its notice; a real one stays until its cause is gone.</summary>
    /// <returns>Whether there is such a notice.</returns>
    public async Task<bool> JudgeAsync(long noticeId, bool real, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Notices.FindAsync([noticeId], ct) is not { } notice) return false;
        (notice.JudgedReal, notice.JudgedBy) = (real, by);
        if (!real) notice.EndedAt ??= clock.GetUtcNow();
        await db.SaveChangesAsync(ct);
        news.Tell([notice.ChainId]);
        return true;
    }
}
