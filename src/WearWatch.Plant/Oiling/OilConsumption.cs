using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Plant.Oiling;

/// <summary>Asks how much oil was used, by grade and month.</summary>
public sealed class OilConsumption(IDbContextFactory<WearDb> database, PlantSettings plant, TimeProvider clock)
{
    /// <summary>So many months are looked back.</summary>
    public const int Months = 12;

    /// <summary>
    /// What was used, the newest month first. Withdrawn oilings do not count, corrected ones count as they were corrected.
    /// </summary>
    /// <remarks>
    /// What lubricators gave is added up from their strokes; the oiling that is made of a day of them has no amount of its own,
    /// and would count twice if it had. Their oil is the one on the chain's card.
    /// </remarks>
    public async Task<IReadOnlyList<OilUsed>> AskAsync(CancellationToken ct = default)
    {
        var zone = (await plant.CalendarAsync(ct)).TimeZone;
        var since = clock.GetUtcNow().AddMonths(-Months);
        await using var db = await database.CreateDbContextAsync(ct);
        var grades = await db.Chains.AsNoTracking().ToDictionaryAsync(c => c.Id, c => c.OilGrade, ct);
        var strokes = await LubricatorOil.In(db).Where(s => s.At >= since).ToListAsync(ct);
        var counted = strokes.Select(s => s.ChainId).ToHashSet();
        var oilings = await db.Events.AsNoTracking()
            .Where(e => e.Kind == ChainEventKind.Oiling && e.OilAmountMl != 0 && !e.Withdraws && e.At >= since
                && !db.Events.Any(later => later.CorrectsId == e.Id))
            .Select(e => new { e.ChainId, e.At, e.OilGrade, e.OilAmountMl, e.OilMethod }).ToListAsync(ct);
        var parts = oilings.Select(o => new OilUsed(
                MonthOf(o.At!.Value, zone), o.OilGrade, 1, o.OilAmountMl ?? 0,
                o.OilAmountMl is null && !(o.OilMethod == OilMethod.Lubricator && counted.Contains(o.ChainId)) ? 1 : 0))
            .Concat(strokes.Select(s => new OilUsed(MonthOf(s.At, zone), grades[s.ChainId], 0, s.Millilitres, 0)));
        return
        [
            .. parts.GroupBy(p => (p.Month, p.Grade))
                .Select(g => new OilUsed(
                    g.Key.Month, g.Key.Grade, g.Sum(p => p.Oilings), g.Sum(p => p.Millilitres), g.Sum(p => p.WithoutAmount)))
                .OrderByDescending(u => u.Month).ThenBy(u => u.Grade, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static DateOnly MonthOf(DateTimeOffset at, TimeZoneInfo zone)
    {
        var wall = TimeZoneInfo.ConvertTime(at, zone);
        return new DateOnly(wall.Year, wall.Month, 1);
    }
}
