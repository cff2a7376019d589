using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.ChainList;

/// <summary>A stretch of the list.</summary>
/// <param name="Rows">The rows asked for.</param>
/// <param name="Total">How many the filter leaves.</param>
public sealed record ChainListView(IReadOnlyList<ChainListLine> Rows, int Total);

/// <summary>Asks for a stretch of the list of chains: the database filters, sorts and cuts.</summary>
public sealed class ChainListQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    public async Task<ChainListView> AskAsync(ChainFilter filter, int skip, int take, CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var chains = Narrow(Joined(db), filter, time);
        var total = await chains.CountAsync(ct);
        if (filter.After is { } after) chains = chains.Where(k => string.Compare(k.Chain.Name, after) > 0);
        var rows = await Sorted(chains, filter).Skip(skip).Take(take).Select(ToRow).ToListAsync(ct);
        return new ChainListView(rows, total);
    }

    /// <summary>The lines there are, for the filter.</summary>
    public async Task<IReadOnlyList<string>> LinesAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Chains.Select(c => c.Line).Distinct().OrderBy(line => line).ToListAsync(ct);
    }

    private static IQueryable<Known> Joined(WearDb db) =>
        from chain in db.Chains
        join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into latest
        from forecast in latest.DefaultIfEmpty()
        join reading in db.Readings on forecast.LastReadingId equals reading.Id into last
        from reading in last.DefaultIfEmpty()
        join swap in db.PlannedSwaps on chain.Id equals swap.ChainId into planned
        from swap in planned.DefaultIfEmpty()
        select new Known { Chain = chain, Forecast = forecast, Last = reading, Swap = swap };

    private static IQueryable<Known> Narrow(IQueryable<Known> chains, ChainFilter filter, PlantTime time)
    {
        if (filter.Line is { } line) chains = chains.Where(k => k.Chain.Line == line);
        if (filter.Family is { } family) chains = chains.Where(k => k.Chain.Family == family);
        if (filter.Condition is { } condition)
        {
            chains = condition == Condition.NotKnown
                ? chains.Where(k => k.Forecast == null || k.Forecast.Condition == condition)
                : chains.Where(k => k.Forecast != null && k.Forecast.Condition == condition);
        }

        if (filter.Lifts is { } lifts)
        {
            var (always, byNature) = (ChainFamily.All.Where(f => f.AlwaysLifts), ChainFamily.All.Where(f => f.LiftsByNature));
            chains = chains.Where(k => lifts == (
                k.Chain.Lifts || always.Contains(k.Chain.Family)
                || (byNature.Contains(k.Chain.Family) && k.Chain.NotLiftingReason == "")));
        }

        if (filter.Planned is { } planned) chains = chains.Where(k => planned == (k.Swap != null));
        if (filter.DueBefore is { } date && Clocks.IsPlausible(date.ToDateTime(default)))
        {
            var due = time.StartOf(date);
            chains = chains.Where(k => k.Forecast != null && k.Forecast.EarlyDate < due);
        }

        if (filter.TensionBefore is { } by && Clocks.IsPlausible(by.ToDateTime(default)))
        {
            var day = time.StartOf(by);
            chains = chains.Where(k => k.Forecast != null && (k.Forecast.ShortenEarlyDate < day || k.Forecast.TensionFrom < day));
        }

        foreach (var word in filter.Search.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var pattern = "%" + word.Replace("\\", @"\\").Replace("%", @"\%").Replace("_", @"\_") + "%";
            chains = chains.Where(k =>
                EF.Functions.Like(k.Chain.Name, pattern, @"\") || EF.Functions.Like(k.Chain.Position, pattern, @"\")
                || EF.Functions.Like(k.Chain.ChainType, pattern, @"\") || EF.Functions.Like(k.Chain.Line, pattern, @"\"));
        }

        return chains;
    }

    /// <summary>Sorted as asked, what is not known always last, and by name within.</summary>
    private static IQueryable<Known> Sorted(IQueryable<Known> chains, ChainFilter filter) => filter.Sort switch
    {
        ChainSort.Name => By(chains, k => k.Chain.Name, filter.Descending),
        ChainSort.Line => By(chains, k => k.Chain.Line, filter.Descending).ThenBy(k => k.Chain.Position),
        ChainSort.Type => By(chains, k => k.Chain.ChainType, filter.Descending),
        ChainSort.Elongation =>
            By(chains.OrderBy(k => k.Forecast!.ElongationPct == null), k => k.Forecast!.ElongationPct, filter.Descending),
        ChainSort.Rate =>
            By(chains.OrderBy(k => k.Forecast == null), k => (double?)k.Forecast!.RatePctPer1000H, filter.Descending),
        ChainSort.Limit => By(chains.OrderBy(k => k.Forecast == null), k => (double?)k.Forecast!.LimitPct, filter.Descending),
        ChainSort.Lubrication =>
            By(chains.OrderBy(k => k.Forecast!.NextOilingAt == null), k => k.Forecast!.NextOilingAt, filter.Descending),
        ChainSort.Tension => By(
            chains.OrderBy(k => k.Forecast!.ShortenEarlyDate == null && k.Forecast.TensionFrom == null),
            k => k.Forecast!.ShortenEarlyDate == null || k.Forecast.TensionFrom < k.Forecast.ShortenEarlyDate
                ? k.Forecast.TensionFrom
                : k.Forecast.ShortenEarlyDate, filter.Descending),
        ChainSort.Planned => By(chains.OrderBy(k => k.Swap == null), k => k.Swap!.Start, filter.Descending),
        ChainSort.LastReading => By(
            chains.OrderBy(k => k.Last == null), k => k.Last!.TakenAt ?? (DateTimeOffset?)k.Last.ReceivedAt, filter.Descending),
        _ => By(chains.OrderBy(k => k.Forecast!.EarlyDate == null), k => k.Forecast!.EarlyDate, filter.Descending),
    };

    private static IOrderedQueryable<Known> By<T>(IQueryable<Known> chains, Expression<Func<Known, T>> key, bool descending) =>
        (descending ? chains.OrderByDescending(key) : chains.OrderBy(key)).ThenBy(k => k.Chain.Name);

    private static IOrderedQueryable<Known> By<T>(
        IOrderedQueryable<Known> chains, Expression<Func<Known, T>> key, bool descending) =>
        (descending ? chains.ThenByDescending(key) : chains.ThenBy(key)).ThenBy(k => k.Chain.Name);

    private static readonly Expression<Func<Known, ChainListLine>> ToRow = known => new ChainListLine
    {
        Id = known.Chain.Id,
        Name = known.Chain.Name,
        Line = known.Chain.Line,
        Position = known.Chain.Position,
        ChainType = known.Chain.ChainType,
        Family = known.Chain.Family,
        HoldsLoad = known.Chain.Family.Lifts(known.Chain.Lifts, known.Chain.NotLiftingReason != ""),
        Condition = ConditionWords.Of(
            known.Forecast == null ? Condition.NotKnown : known.Forecast.Condition,
            known.Chain.Family.Lifts(known.Chain.Lifts, known.Chain.NotLiftingReason != "")),
        ElongationPct = known.Forecast == null ? null : known.Forecast.ElongationPct,
        RatePctPer1000H = known.Forecast == null ? null : known.Forecast.RatePctPer1000H,
        LimitPct = known.Forecast == null ? known.Chain.LimitPct : known.Forecast.LimitPct,
        LimitReason = known.Forecast == null ? null : known.Forecast.LimitReason,
        Sooner = known.Forecast == null ? null : known.Forecast.Sooner,
        EarlyDate = known.Forecast == null ? null : known.Forecast.EarlyDate,
        ShortenFrom = known.Forecast == null ? null : known.Forecast.ShortenEarlyDate,
        TensionFrom = known.Forecast == null ? null : known.Forecast.TensionFrom,
        OutOfUseBy = known.Forecast == null ? null : known.Forecast.OutOfUseBy,
        PlannedSwap = known.Swap == null ? null : known.Swap.Start,
        NextOilingAt = known.Forecast == null ? null : known.Forecast.NextOilingAt,
        LastReadingAt = known.Last == null ? null : known.Last.TakenAt ?? known.Last.ReceivedAt,
    };

    private sealed class Known
    {
        public required ChainRow Chain { get; init; }

        public ForecastRow? Forecast { get; init; }

        public ReadingRow? Last { get; init; }

        public SwapRow? Swap { get; init; }
    }
}
