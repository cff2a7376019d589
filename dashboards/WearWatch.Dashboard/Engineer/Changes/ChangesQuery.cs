using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Changes;

/// <summary>Asks for the alarms that chains began to wear faster, with what else happened then.</summary>
public sealed class ChangesQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>So many alarms are shown; the newest matter.</summary>
    public const int MostShown = 100;

    private static readonly TimeSpan Before = TimeSpan.FromDays(60);
    private static readonly TimeSpan After = TimeSpan.FromDays(7);
    private static readonly TimeSpan YearBefore = TimeSpan.FromDays(365);

    /// <summary>A chain that is measured so much warmer or colder than before runs otherwise, or is measured otherwise.</summary>
    private const double TellingWarmthC = 10;

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
                .Where(e => ids.Contains(e.ChainId) && (e.CorrectsId != null || (e.At > from && e.At < to))).OrderBy(e => e.Id)
                .ToListAsync(ct))
            .GroupBy(e => e.ChainId).ToDictionary(g => g.Key, g => StandingRows.Standing([.. g]));
        var others = (await db.Notices.AsNoTracking().Where(n => ids.Contains(n.ChainId) && n.Kind != NoticeKind.RateHasRisen)
            .ToListAsync(ct))
            .ToLookup(n => n.ChainId);
        var cards = (await db.CardChanges.AsNoTracking().Where(c => ids.Contains(c.ChainId) && c.At > from && c.At < to)
            .OrderBy(c => c.Id).ToListAsync(ct))
            .ToLookup(c => c.ChainId);
        var warmth = await WarmthAsync(db, ids, from, to, ct);
        return new ChangesView(
            [
                .. newest.Select(n => new RateChangeLine
                {
                    NoticeId = n.notice.Id,
                    Chain = n.Name,
                    Line = n.Line,
                    RaisedAt = n.notice.RaisedAt,
                    EndedAt = n.notice.EndedAt,
                    Why = n.notice.Why,
                    JudgedReal = n.notice.JudgedReal,
                    JudgedBy = n.notice.JudgedBy,
                    Nearby =
                    [
                        .. Nearby(n.notice, events.GetValueOrDefault(n.notice.ChainId) ?? [], others[n.notice.ChainId], time),
                        .. Duty(n.notice, cards[n.notice.ChainId], warmth[n.notice.ChainId], time),
                    ],
                })
            ],
            await alarms.CountAsync(ct),
            new ObservedShare(
                await alarms.CountAsync(n => n.JudgedReal == true, ct), await alarms.CountAsync(n => n.JudgedReal != null, ct)),
            time);
    }

    /// <summary>Events of the two months before and the week after, and what else asked for attention then.</summary>
    public static IEnumerable<Phrase> Nearby(
        NoticeRow alarm, IEnumerable<EventRow> events, IEnumerable<NoticeRow> others, PlantTime time)
    {
        var near = events.Where(e => e.At is { } at && at > alarm.RaisedAt - Before && at < alarm.RaisedAt + After)
            .OrderBy(e => e.At);
        foreach (var alike in near.GroupBy(e => (e.Kind, e.Lot, e.Broke, e.PitchesOut, e.NewPitches, e.NewTeeth, e.Note)))
        {
            var last = time.DateOf(alike.Last().At!.Value);
            var told = alike.First().ToEvent("") with { TakeUpMm = null };
            var when = alike.Count() > 1
                ? Phrase.Of($"{TradeWords.Of(alike.Key.Kind)} {alike.Count()} times, last on {last}")
                : $"{TradeWords.Of(alike.Key.Kind)} on {last}";
            var said = Phrase.Join(", ", [when, .. TradeWords.Facts(told, UnitPreference.Si).Select(f => Phrase.Of($"{f}"))]);
            yield return alike.Key.Note.Length > 0 ? $"{said}: {alike.Key.Note}" : said;
        }

        foreach (var other in others.Where(n => n.RaisedAt < alarm.RaisedAt + After && !(n.EndedAt <= alarm.RaisedAt - Before)))
        {
            var (kind, since) = (TradeWords.Of(other.Kind), time.DateOf(other.RaisedAt));
            yield return other.EndedAt is { } end
                ? Phrase.Of($"{kind} since {since} until {time.DateOf(end)}")
                : $"{kind} since {since}";
        }
    }

    /// <summary>What changed in the chain's duty then: its card, and how warm it was when it was measured.</summary>
    public static IEnumerable<Phrase> Duty(
        NoticeRow alarm, IEnumerable<CardChangeRow> changes, IEnumerable<(DateTimeOffset At, double TemperatureC)> warmth,
        PlantTime time)
    {
        // its entry or another name wears nothing
        foreach (var change in changes.Where(c => c.At > alarm.RaisedAt - Before && c.At < alarm.RaisedAt + After
            && c.Field != CardChanges.Entry && CardField.Of(c.Field) is not null))
        {
            var field = CardField.Of(change.Field)!;
            var (from, to) = (field.Said(change.From), field.Said(change.To));
            yield return $"card: {field.Asked.Name} {from} to {to} on {time.DateOf(change.At)}";
        }

        var then = warmth.Where(w => w.At > alarm.RaisedAt - Before && w.At < alarm.RaisedAt + After).Select(w => w.TemperatureC)
            .ToList();
        var earlier = warmth.Where(w => w.At <= alarm.RaisedAt - Before).Select(w => w.TemperatureC).ToList();
        if (then.Count > 0 && earlier.Count > 0 && Math.Abs(then.Average() - earlier.Average()) >= TellingWarmthC)
            yield return $"measured at {then.Average():0} °C, before at {earlier.Average():0} °C";
    }

    private static async Task<ILookup<int, (DateTimeOffset At, double TemperatureC)>> WarmthAsync(
        WearDb db, IReadOnlyCollection<int> ids, DateTimeOffset from, DateTimeOffset to, CancellationToken ct)
    {
        var earliest = from - YearBefore;
        var readings = await db.Readings.AsNoTracking()
            .Where(r => ids.Contains(r.ChainId) && r.TemperatureC != null && r.TakenAt > earliest && r.TakenAt < to)
            .Select(r => new { r.ChainId, r.TakenAt, r.TemperatureC }).ToListAsync(ct);
        return readings.ToLookup(r => r.ChainId, r => (r.TakenAt!.Value, r.TemperatureC!.Value));
    }
}
