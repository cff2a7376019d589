using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Words;
using WearWatch.Lives;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineering.Changes;

/// <summary>Asks for the alarms that chains began to wear faster, with what else happened then.</summary>
public sealed class ChangesQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>So many alarms are shown; the newest matter.</summary>
    public const int MostShown = 100;

    private static readonly TimeSpan Before = TimeSpan.FromDays(60);
    private static readonly TimeSpan After = TimeSpan.FromDays(7);

    public async Task<ChangesView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var alarms = db.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.RateHasRisen);
        if (!await alarms.AnyAsync(ct)) return new ChangesView([], 0, default, time);
        var newest = await (
            from notice in alarms
            join chain in db.Chains on notice.ChainId equals chain.Id
            orderby notice.RaisedAt descending, notice.Id descending
            select new { notice, chain.Name, chain.Line }).Take(MostShown).ToListAsync(ct);
        var ids = newest.Select(n => n.notice.ChainId).Distinct().ToList();
        // Years of oilings lie outside; a correction must be seen all the same, whatever date it gives.
        var (from, to) = (newest[^1].notice.RaisedAt - Before, newest[0].notice.RaisedAt + After);
        var events = (await db.Events.AsNoTracking()
                .Where(e => ids.Contains(e.ChainId) && (e.CorrectsId != null || (e.At > from && e.At < to))).OrderBy(e => e.Id).ToListAsync(ct))
            .GroupBy(e => e.ChainId).ToDictionary(g => g.Key, g => StandingRows.Standing([.. g]));
        var others = (await db.Notices.AsNoTracking().Where(n => ids.Contains(n.ChainId) && n.Kind != NoticeKind.RateHasRisen).ToListAsync(ct))
            .ToLookup(n => n.ChainId);
        return new ChangesView(
            [
                .. newest.Select(n => new RateChangeRow(
                    n.notice.Id, n.Name, n.Line, n.notice.RaisedAt, n.notice.EndedAt, n.notice.Why, n.notice.JudgedReal, n.notice.JudgedBy,
                    [.. Nearby(n.notice, events.GetValueOrDefault(n.notice.ChainId) ?? [], others[n.notice.ChainId], time)]))
            ],
            await alarms.CountAsync(ct),
            new ObservedShare(await alarms.CountAsync(n => n.JudgedReal == true, ct), await alarms.CountAsync(n => n.JudgedReal != null, ct)),
            time);
    }

    /// <summary>Events of the two months before and the week after, and what else asked for attention then.</summary>
    public static IEnumerable<string> Nearby(NoticeRow alarm, IEnumerable<EventRow> events, IEnumerable<NoticeRow> others, PlantTime time)
    {
        var near = events.Where(e => e.At is { } at && at > alarm.RaisedAt - Before && at < alarm.RaisedAt + After).OrderBy(e => e.At);
        foreach (var alike in near.GroupBy(e => (e.Kind, e.Note)))
        {
            var last = $"on {time.Day(alike.Last().At!.Value)}";
            var note = alike.Key.Note.Length > 0 ? ": " + alike.Key.Note : "";
            yield return $"{TradeWords.Of(alike.Key.Kind)} {(alike.Count() > 1 ? $"{alike.Count()} times, last {last}" : last)}{note}";
        }

        foreach (var other in others.Where(n => n.RaisedAt < alarm.RaisedAt + After && !(n.EndedAt <= alarm.RaisedAt - Before)))
        {
            var until = other.EndedAt is { } end ? " until " + time.Day(end) : "";
            yield return $"{TradeWords.Of(other.Kind).ToLowerInvariant()} since {time.Day(other.RaisedAt)}{until}";
        }
    }
}
