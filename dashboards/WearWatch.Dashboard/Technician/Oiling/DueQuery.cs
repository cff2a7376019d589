using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Plant.Oiling;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>Asks which chains are to be oiled within a week.</summary>
public sealed class DueQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    private static readonly TimeSpan Ahead = TimeSpan.FromDays(7);

    public async Task<DueList> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await (
            from chain in db.Chains.AsNoTracking()
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId
            where forecast.NextOilingAt < time.Now + Ahead
            select new { chain, forecast.NextOilingAt, forecast.HoursSinceOiling, forecast.OilingIntervalH, forecast.AmbientC })
                .ToListAsync(ct);
        return new DueList(
            [.. rows.Select(r => Of(r.chain.Id, Warm(r.chain.ToCard(), r.AmbientC), r.NextOilingAt!.Value,
                Missed(r.HoursSinceOiling, r.OilingIntervalH), time))],
            time);
    }

    private static DueChain Of(int id, ChainCard card, DateTimeOffset at, int missed, PlantTime time) => new()
    {
        Id = id,
        Name = card.Name,
        Line = card.Line,
        Position = card.Position,
        State = missed > 0 ? DueState.Overdue : time.DateOf(at) <= time.Today ? DueState.Today : DueState.ThisWeek,
        At = at,
        LooksAtOiler = card.Duty.Lubrication == LubricationState.Auto,
        Grade = OilRound.GradeOf(card),
        Advice = OilAdvice.For(card),
        Missed = missed,
    };

    private static ChainCard Warm(ChainCard card, double? ambientC) =>
        card with { Duty = card.Duty with { AmbientC = ambientC } };

    /// <summary>Whole intervals that have passed since the last oiling, but for the one that ends now.</summary>
    private static int Missed(double? since, double? interval) =>
        since is { } hours && interval is > 0 and var every ? Math.Max(0, (int)Math.Floor(hours / every) - 1) : 0;
}
