using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Storage;

namespace WearWatch.Worker.Oiling;

/// <summary>Asks how much oil was used, by grade and month.</summary>
public sealed class OilConsumption(IDbContextFactory<WearDb> database, PlantSettings plant, TimeProvider clock)
{
    /// <summary>So many months are looked back.</summary>
    public const int Months = 12;

    /// <summary>What was used, the newest month first. Withdrawn oilings do not count, corrected ones count as they were corrected.</summary>
    public async Task<IReadOnlyList<OilUsed>> AskAsync(CancellationToken ct = default)
    {
        var zone = (await plant.CalendarAsync(ct)).TimeZone;
        var since = clock.GetUtcNow().AddMonths(-Months);
        await using var db = await database.CreateDbContextAsync(ct);
        var oilings = await db.Events.AsNoTracking()
            .Where(e => e.Kind == ChainEventKind.Oiling && !e.Withdraws && e.At >= since && !db.Events.Any(later => later.CorrectsId == e.Id))
            .Select(e => new { e.At, e.OilGrade, e.OilAmountMl }).ToListAsync(ct);
        return
        [
            .. oilings.GroupBy(o => (Month: MonthOf(o.At!.Value, zone), o.OilGrade))
                .Select(g => new OilUsed(
                    g.Key.Month, g.Key.OilGrade, g.Count(), g.Sum(o => o.OilAmountMl ?? 0), g.Count(o => o.OilAmountMl is null)))
                .OrderByDescending(u => u.Month).ThenBy(u => u.Grade, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static DateOnly MonthOf(DateTimeOffset at, TimeZoneInfo zone)
    {
        var wall = TimeZoneInfo.ConvertTime(at, zone);
        return new DateOnly(wall.Year, wall.Month, 1);
    }
}
