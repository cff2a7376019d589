using System.Net.Mail;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mailing;

/// <summary>Keeps which notices people want by mail, and says which mails are to be written.</summary>
public sealed class MailDesk(IDbContextFactory<WearDb> databases, PlantClock clock, IOptions<MailOptions> options)
{
    /// <summary>Whether a mail server is set.</summary>
    public bool IsOn => options.Value.IsOn;

    /// <summary>What a person wishes; never any mail while nothing was chosen.</summary>
    public async Task<MailWishRow> AskAsync(int personId, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.MailWishes.AsNoTracking().SingleOrDefaultAsync(w => w.PersonId == personId, ct)
            ?? new MailWishRow { PersonId = personId };
    }

    /// <summary>The lines of the plant, by name; one of them is empty where chains belong to none.</summary>
    public async Task<IReadOnlyList<string>> LinesAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Chains.Select(c => c.Line).Distinct().OrderBy(l => l).ToListAsync(ct);
    }

    /// <summary>Keeps what a person wishes from now on. Says what stands against it; null when it is kept.</summary>
    public async Task<Phrase?> KeepAsync(MailWishRow wish, CancellationToken ct = default)
    {
        if (wish.Rhythm != MailRhythm.Never && !IsAddress(wish.Address)) return $"A mail address such as ina@example.org.";
        if (wish.QuietFrom is null != wish.QuietTo is null) return $"Quiet hours need a beginning and an end.";
        wish.Since = (await clock.NowAsync(ct)).Now;
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.MailWishes.FindAsync([wish.PersonId], ct) is { } kept) db.Entry(kept).CurrentValues.SetValues(wish);
        else db.MailWishes.Add(wish);
        await db.SaveChangesAsync(ct);
        return null;
    }

    /// <summary>The mails that are to be written now, each with its person. None to who cannot come in any more.</summary>
    public async Task<IReadOnlyList<(PersonRow Person, MailWishRow Wish, MailDue Due)>> DueAsync(CancellationToken ct = default)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var wishes = await (
            from wish in db.MailWishes.AsNoTracking()
            join person in db.People.AsNoTracking().Where(PersonRow.CanComeIn(time.Now)) on wish.PersonId equals person.Id
            where wish.Rhythm != MailRhythm.Never
            select new { Wish = wish, Person = person }).ToListAsync(ct);
        if (wishes.Count == 0) return [];
        var asking = await AskingAsync(db, time.Now, ct);
        var ids = asking.Select(n => n.Notice.Id).ToList();
        var mailed = (await db.MailedNotices.Where(m => ids.Contains(m.NoticeId)).ToListAsync(ct)).ToLookup(m => m.PersonId);
        var keys = wishes.Select(w => MailDue.DailyKey(w.Wish, time)).ToList();
        var written = await db.Mails.Where(m => keys.Contains(m.Key)).Select(m => m.Key).ToHashSetAsync(ct);
        return
        [
            .. from one in wishes
               let has = mailed[one.Wish.PersonId].Select(m => (m.NoticeId, m.Urgent)).ToHashSet()
               let due = MailDue.Of(one.Wish, asking, has, written.Contains(MailDue.DailyKey(one.Wish, time)), time)
               where due is not null
               select (one.Person, one.Wish, due),
        ];
    }

    /// <summary>Whether mail can be sent to this.</summary>
    private static bool IsAddress(string text) => MailAddress.TryCreate(text, out var read) && read.Address == text;

    private static async Task<List<MailNotice>> AskingAsync(WearDb db, DateTimeOffset now, CancellationToken ct)
    {
        var open = await (
            from notice in db.Notices.AsNoTracking()
            where notice.EndedAt == null
            join chain in db.Chains.AsNoTracking() on notice.ChainId equals chain.Id
            join latest in db.Forecasts.AsNoTracking().Where(f => f.IsLatest) on chain.Id equals latest.ChainId into forecasts
            from forecast in forecasts.DefaultIfEmpty()
            join planned in db.PlannedSwaps on chain.Id equals planned.ChainId into swaps
            from swap in swaps.DefaultIfEmpty()
            select new { notice, chain, forecast, Start = swap == null ? null : swap.Start }).ToListAsync(ct);
        return [.. open.Select(n => new MailNotice(n.notice, n.chain, n.forecast, n.Start)).Where(n => n.Asks(now))];
    }
}
