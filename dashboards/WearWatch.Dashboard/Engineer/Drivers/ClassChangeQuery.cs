using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>Asks what a change of one driver would do to a class of chains, and what that is worth.</summary>
public sealed class ClassChangeQuery(IDbContextFactory<WearDb> databases, FleetModels models, CostQuery costs)
{
    /// <summary>The classes, and the answer for the one asked about; null while no fleet model has been trained.</summary>
    public async Task<ClassChangeView?> AskAsync(ClassQuestion asked, CancellationToken ct)
    {
        if (await models.CurrentAsync(ct) is not { } model) return null;
        await using var db = await databases.CreateDbContextAsync(ct);
        var cards = (await (
            from chain in db.Chains.AsNoTracking()
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId
            select new { chain, forecast.MeanHoursSinceOiling, forecast.AmbientC }).ToListAsync(ct))
            .ConvertAll(c => DriversQuery.Seen(c.chain.ToCard(), c.MeanHoursSinceOiling, c.AmbientC));
        var groups = cards.GroupBy(c => asked.By.Of(c)).OrderBy(g => g.Key, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => (IReadOnlyList<ChainCard>)[.. g]);
        var view = new ClassChangeView([.. groups.Keys], model.Uses(InputOf(asked.Driver)), null, null, asked);
        if (!groups.TryGetValue(asked.Group, out var members) || !view.IsUsed) return view;
        if (ClassChange.Of(members, model, asked.Driver, asked.ToPercent) is not { } change) return view;
        var year = (await costs.AskAsync(card => asked.By.Of(card), ct)).Groups.FirstOrDefault(g => g.Group == asked.Group).Year;
        return view with
        {
            Change = change,
            Saving = year is null ? null : ClassSaving.Of(change, year, asked.Once, asked.EachYear),
        };
    }

    /// <summary>What the fleet model calls a driver.</summary>
    private static string InputOf(ClassDriver driver) => driver switch
    {
        ClassDriver.Load => "relative load",
        ClassDriver.Speed => "speed",
        ClassDriver.OilInterval => FleetModel.HoursSinceOiling,
        ClassDriver.Lubricator => "lubrication",
        _ => "dust",
    };
}
