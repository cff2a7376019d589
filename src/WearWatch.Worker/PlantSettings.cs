using Microsoft.EntityFrameworkCore;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker;

/// <summary>The plant's settings: name, time zone, shifts, holidays, utilisation.</summary>
public sealed class PlantSettings(IDbContextFactory<WearDb> database)
{
    /// <summary>The settings; those of a plant that runs round the clock in UTC where none are kept yet.</summary>
    public async Task<PlantRow> CurrentAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Plants.AsNoTracking().OrderBy(p => p.Id).FirstOrDefaultAsync(ct) ?? new PlantRow { Name = "Plant", TimeZone = "UTC" };
    }

    /// <summary>When the plant runs.</summary>
    public async Task<ProductionCalendar> CalendarAsync(CancellationToken ct = default) => ShiftPlan.Calendar(await CurrentAsync(ct));

    /// <summary>Changes the settings.</summary>
    public async Task ChangeAsync(Action<PlantRow> change, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var plant = await db.Plants.OrderBy(p => p.Id).FirstOrDefaultAsync(ct);
        if (plant is null) db.Plants.Add(plant = new PlantRow { Name = "Plant", TimeZone = "UTC" });
        change(plant);
        await db.SaveChangesAsync(ct);
    }
}
