using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Sending;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mailing;

/// <summary>The mails that were written: they wait here until the server has them, however long it is away.</summary>
/// <remarks>
/// Sent at least once: a process that is killed after the server took a mail and before that was kept sends it again, under the
/// same Message-ID, by which servers and readers drop the second.
/// </remarks>
public sealed class MailBox(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>While somebody sends a mail nobody else does; who dies over it leaves it free after this.</summary>
    private static readonly TimeSpan HeldFor = TimeSpan.FromMinutes(5);

    private static readonly Backoff backoff = new(TimeSpan.FromSeconds(30), TimeSpan.FromHours(1));
    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(90);

    /// <summary>Puts a mail in, and keeps that the person has these notices.</summary>
    /// <returns>False when another process has written one of them meanwhile: then nothing is kept.</returns>
    public async Task<bool> PutAsync(MailRow mail, IReadOnlyList<MailNotice> notices, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        db.Mails.Add(mail);
        db.MailedNotices.AddRange(notices.Select(n => new MailedNoticeRow
        {
            PersonId = mail.PersonId,
            NoticeId = n.Notice.Id,
            Urgent = n.Notice.Urgent,
        }));
        try
        {
            await db.SaveChangesAsync(ct);
            return true;
        }
        catch (DbUpdateException)
        {
            var ids = notices.Select(n => n.Notice.Id).ToList();
            await using var look = await databases.CreateDbContextAsync(ct);
            if (await look.Mails.AnyAsync(m => m.Key == mail.Key, ct)
                || await look.MailedNotices.AnyAsync(m => m.PersonId == mail.PersonId && ids.Contains(m.NoticeId), ct))
                return false;
            throw;
        }
    }

    /// <summary>How many wait.</summary>
    public async Task<int> WaitingAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Mails.CountAsync(m => m.EndedAt == null, ct);
    }

    /// <summary>The mail to a person that was written last; null for none.</summary>
    public async Task<MailRow?> LastAsync(int personId, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Mails.AsNoTracking().Where(m => m.PersonId == personId).OrderByDescending(m => m.Id)
            .FirstOrDefaultAsync(ct);
    }

    /// <summary>Takes the next one whose time has come; null for none. It is another's when it was taken meanwhile.</summary>
    public async Task<MailRow?> TakeAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var now = clock.GetUtcNow();
        while (await db.Mails.AsNoTracking().Where(m => m.EndedAt == null && m.NextTryAt <= now).OrderBy(m => m.Id)
            .FirstOrDefaultAsync(ct) is { } mail)
        {
            var taken = await db.Mails.Where(m => m.Id == mail.Id && m.EndedAt == null && m.NextTryAt == mail.NextTryAt)
                .ExecuteUpdateAsync(m => m.SetProperty(x => x.NextTryAt, now + HeldFor), ct);
            if (taken == 1) return mail;
        }

        return null;
    }

    /// <summary>The server took it.</summary>
    public Task SentAsync(MailRow mail) => EndAsync(mail, isSent: true, "");

    /// <summary>The server refused it for good.</summary>
    public Task GiveUpAsync(MailRow mail, string why) => EndAsync(mail, isSent: false, why);

    /// <summary>It could not be sent: it is tried again, later and later.</summary>
    public async Task WaitAsync(MailRow mail, string why)
    {
        var next = clock.GetUtcNow() + backoff.After(mail.Tries);
        await using var db = await databases.CreateDbContextAsync();
        await db.Mails.Where(m => m.Id == mail.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.NextTryAt, next)
            .SetProperty(x => x.Tries, mail.Tries + 1).SetProperty(x => x.Fault, why));
    }

    /// <summary>Removes those that ended long ago. That their notices were mailed stays.</summary>
    public async Task ThinAsync(CancellationToken ct = default)
    {
        var before = clock.GetUtcNow() - KeptFor;
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.Mails.Where(m => m.EndedAt < before).ExecuteDeleteAsync(ct);
    }

    private async Task EndAsync(MailRow mail, bool isSent, string why)
    {
        DateTimeOffset? now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync();
        await db.Mails.Where(m => m.Id == mail.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.EndedAt, now)
            .SetProperty(x => x.IsSent, isSent).SetProperty(x => x.Tries, mail.Tries + 1).SetProperty(x => x.Fault, why));
    }
}
