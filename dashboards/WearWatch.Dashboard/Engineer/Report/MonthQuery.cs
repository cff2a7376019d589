using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>Asks for the report of a month.</summary>
public sealed class MonthQuery(
    IDbContextFactory<WearDb> databases, LifeBook book, RecordQuery records, CostQuery costs, LiftingStatesQuery lifting,
    PlantSettings settings, PlantClock clock)
{
    private static readonly TimeSpan Ahead = TimeSpan.FromDays(56);

    /// <summary>Whether an answer is quick; the first one after the start reads every chain.</summary>
    public bool IsQuick => book.IsOpen;

    /// <summary>The report of a month; of the month that runs when none is named.</summary>
    public async Task<MonthReport> AskAsync(DateOnly? month, CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        var first = month ?? time.Today;
        var facts = await FactsAsync(new DateOnly(first.Year, first.Month, 1), time, ct);
        return await Task.Run(
            () => new MonthReport(facts.Month, facts.Plant, time, MonthWriting.Parts(facts)) { Lifting = facts.Lifting }, ct);
    }

    private async Task<MonthFacts> FactsAsync(DateOnly month, PlantTime time, CancellationToken ct)
    {
        var fleet = await book.ReadAsync(ct);
        var record = await records.ForecastsAsync(madeAgain: false, ct);
        var (start, end, soon) = (time.StartOf(month), time.StartOf(month.AddMonths(1)), time.Now + Ahead);
        await using var db = await databases.CreateDbContextAsync(ct);
        var conditions = await (
            from chain in db.Chains
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into latest
            from forecast in latest.DefaultIfEmpty()
            select ConditionWords.Of(
                forecast == null ? Condition.NotKnown : forecast.Condition,
                chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != ""))).ToListAsync(ct);
        var due =
            from forecast in db.Forecasts
            where forecast.IsLatest
                && (forecast.Condition == Condition.SwapNow || forecast.EarlyDate < soon || forecast.OutOfUseBy < soon)
            join chain in db.Chains on forecast.ChainId equals chain.Id
            orderby forecast.Condition == Condition.SwapNow descending, forecast.OutOfUseBy ?? forecast.EarlyDate
            select new ChainComingDue(
                chain.Name, chain.Line,
                ConditionWords.Of(forecast.Condition, chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != "")),
                forecast.EarlyDate,
                db.Swaps.Where(s => s.ChainId == chain.Id && s.Outcome == SwapEnd.Planned).Select(s => s.Start)
                    .FirstOrDefault(), forecast.OutOfUseBy);
        var raised =
            from notice in db.Notices
            where notice.RaisedAt >= start && notice.RaisedAt < end
            join chain in db.Chains on notice.ChainId equals chain.Id
            orderby notice.RaisedAt
            select new { notice, chain.Name };
        return new MonthFacts
        {
            Month = month,
            Plant = (await settings.CurrentAsync(ct)).Name,
            Time = time,
            Conditions = conditions.CountBy(words => words).ToDictionary(),
            Lifting = await lifting.AskAsync(ct),
            Due = await due.AsNoTracking().ToListAsync(ct),
            Raised = [.. (await raised.AsNoTracking().ToListAsync(ct)).Select(r => (r.notice, r.Name))],
            PlantNotices = await db.PlantNotices.AsNoTracking().Where(n => n.EndedAt == null).ToListAsync(ct),
            Unjudged = await db.Notices
                .CountAsync(n => n.Kind == NoticeKind.RateHasRisen && n.EndedAt == null && n.JudgedReal == null, ct),
            Waiting = await db.Readings
                .CountAsync(r => r.Standing == ReadingStanding.Waiting && !db.Readings.Any(c => c.CorrectsId == r.Id), ct),
            Fleet = fleet,
            Record = record,
            Terms = await costs.TermsAsync(ct),
        };
    }
}
