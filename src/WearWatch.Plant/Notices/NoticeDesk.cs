using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Notices;

/// <summary>Keeps what a person found who followed a notice.</summary>
public sealed class NoticeDesk(IDbContextFactory<WearDb> databases, PlantNews news, TimeProvider clock)
{
    /// <summary>Keeps a person's judgement; null takes it back.</summary>
    /// <returns>Whether there is such a notice.</returns>
    public Task<bool> JudgeAsync(long noticeId, bool? real, string by, CancellationToken ct) =>
        ChangeAsync(noticeId, notice => (notice.JudgedReal, notice.JudgedBy) = (real, real is null ? "" : by), ct);

    /// <summary>
    /// Keeps a judgement on a chain that was said to wear faster. A false alarm ends its notice; a real one stays until its cause
    /// is gone.
    /// </summary>
    /// <returns>Whether there is such a notice.</returns>
    public Task<bool> JudgeRateChangeAsync(long noticeId, bool real, string by, CancellationToken ct) =>
        ChangeAsync(noticeId, notice =>
    {
        (notice.JudgedReal, notice.JudgedBy) = (real, by);
        if (!real) notice.EndedAt ??= clock.GetUtcNow();
    }, ct);

    private async Task<bool> ChangeAsync(long noticeId, Action<NoticeRow> change, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Notices.FindAsync([noticeId], ct) is not { } notice) return false;
        change(notice);
        await db.SaveChangesAsync(ct);
        news.Tell([notice.ChainId]);
        return true;
    }
}
