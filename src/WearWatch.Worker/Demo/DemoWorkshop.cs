using Microsoft.EntityFrameworkCore;
using WearWatch.SensorSim;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Demo;

/// <summary>
/// Gives the demo plant its shutdowns, its store and the costs of its lines, so that swaps can be planned at once.
/// </summary>
internal static class DemoWorkshop
{
    /// <summary>What an oiling and a chain with its fitting cost the made-up mill, in euros.</summary>
    private const double CostOfOiling = 6;
    private const double CostOfChain = 900;

    /// <summary>Writes them down once; what a person has changed since stays.</summary>
    public static async Task EquipAsync(IDbContextFactory<WearDb> database, DateOnly today, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.WindowRules.AnyAsync(ct) || await db.Spares.AnyAsync(ct) || await db.LineCosts.AnyAsync(ct)) return;
        db.WindowRules.AddRange(MillWorkshop.ShutdownsAfter(today).Select(shutdown => new WindowRuleRow
        {
            Key = $"{shutdown.Line} {shutdown.Recurrence}",
            Line = shutdown.Line,
            FirstStart = shutdown.FirstStart,
            LengthH = shutdown.Hours,
            Recurrence = shutdown.Recurrence,
            Crew = MillWorkshop.Crew,
            CrewHours = shutdown.People * shutdown.Hours,
        }));
        db.Spares.AddRange(MillWorkshop.Store.Select(spare => new SpareRow
        {
            Kind = spare.Kind,
            Designation = spare.ChainType,
            InStock = spare.InStock,
            LeadDays = spare.LeadDays,
            PackSize = spare.PackSize,
            Price = spare.Price,
        }));
        db.LineCosts.AddRange(
            MillWorkshop.StoppedPerHour.Select(line => new LineCostRow { Line = line.Key, StoppedPerHour = line.Value }));
        if (!await db.OilTerms.AnyAsync(ct))
            db.OilTerms.Add(new OilTermsRow { CostOfOiling = CostOfOiling, CostOfChain = CostOfChain });
        await db.SaveChangesAsync(ct);
    }
}
