using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Books;
using WearWatch.Plant.Oiling;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Plant.Costs;

/// <summary>Asks what chains cost.</summary>
public sealed class CostQuery(IDbContextFactory<WearDb> databases, LifeBook book, PlantClock clock)
{
    /// <summary>Whether an answer is quick; the first one after the start reads every chain.</summary>
    public bool IsQuick => book.IsOpen;

    /// <summary>The year up to now and the one before, by group.</summary>
    /// <param name="groupOf">The group that a chain belongs to, by its card.</param>
    /// <param name="ct">To give up.</param>
    public async Task<FleetCosts> AskAsync(Func<ChainCard, string> groupOf, CancellationToken ct)
    {
        var now = (await clock.NowAsync(ct)).Now;
        var fleet = await book.ReadAsync(ct);
        var terms = await TermsAsync(ct);
        return FleetCosts.Of(fleet, terms, groupOf, now, await OilingsAsync(CostPeriod.YearUpTo(now), ct));
    }

    /// <summary>What things cost.</summary>
    public async Task<CostTerms> TermsAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var row = await db.PlanningCosts.AsNoTracking().OrderBy(c => c.Id).FirstOrDefaultAsync(ct) ?? CostRows.Usual();
        var kind = PartKind.Chain.ToString();
        var prices = await db.Spares.AsNoTracking().Where(s => s.Kind == kind && s.Price > 0)
            .ToDictionaryAsync(s => s.Designation, s => s.Price, ct);
        return new CostTerms(
            CostRows.ToCosts(row, await db.LineCosts.AsNoTracking().ToListAsync(ct)), prices, row.UsualPitchPrice,
            row.SprocketPrice);
    }

    private async Task<Dictionary<int, (OilGiven Year, OilGiven Before)>> OilingsAsync(CostPeriod year, CancellationToken ct)
    {
        var (first, turn, end) = (year.YearBefore.From, year.From, year.To);
        await using var db = await databases.CreateDbContextAsync(ct);
        var oilings =
            from e in db.Events
            where e.Kind == ChainEventKind.Oiling && e.OilAmountMl != 0 && e.At >= first && e.At < end && !e.Withdraws
                && !db.Events.Any(c => c.CorrectsId == e.Id)
            group e by new { e.ChainId, InYear = e.At >= turn } into g
            select new { g.Key.ChainId, g.Key.InYear, Count = g.Count(), Ml = g.Sum(e => e.OilAmountMl) ?? 0 };
        var strokes =
            from s in LubricatorOil.In(db)
            where s.At >= first && s.At < end
            group s by new { s.ChainId, InYear = s.At >= turn } into g
            select new { g.Key.ChainId, g.Key.InYear, Count = 0, Ml = g.Sum(s => s.Millilitres) };
        var found = (await oilings.ToListAsync(ct)).Concat(await strokes.ToListAsync(ct)).ToLookup(o => o.ChainId);
        OilGiven In(int chain, bool inYear) =>
            found[chain].Where(o => o.InYear == inYear)
                .Aggregate(default(OilGiven), (sum, o) => new(sum.Oilings + o.Count, sum.Millilitres + o.Ml));
        return found.ToDictionary(g => g.Key, g => (In(g.Key, inYear: true), In(g.Key, inYear: false)));
    }
}
