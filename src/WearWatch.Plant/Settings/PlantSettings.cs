using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Settings;

/// <summary>The plant's settings: name, time zone, shifts, holidays, utilisation.</summary>
public sealed class PlantSettings(IDbContextFactory<WearDb> database)
{
    /// <summary>No letter that can be taken for another one: a mark is also read out and typed.</summary>
    private const string MarkLetters = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    private const int MarkLength = 8;

    /// <summary>The settings; those of a plant that runs round the clock in UTC where none are kept yet.</summary>
    public async Task<PlantRow> CurrentAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Plants.AsNoTracking().OrderBy(p => p.Id).FirstOrDefaultAsync(ct)
            ?? new PlantRow { Name = "Plant", TimeZone = "UTC" };
    }

    /// <summary>The plant's mark, which stands on its labels; made when it is first asked for.</summary>
    public async Task<string> MarkAsync(CancellationToken ct = default)
    {
        if ((await CurrentAsync(ct)).Mark is { Length: > 0 } mark) return mark;
        await ChangeAsync(plant => plant.Mark = plant.Mark.Length > 0
            ? plant.Mark
            : RandomNumberGenerator.GetString(MarkLetters, MarkLength), ct);
        return (await CurrentAsync(ct)).Mark;
    }

    /// <summary>When the plant runs.</summary>
    public async Task<ProductionCalendar> CalendarAsync(CancellationToken ct = default) =>
        ShiftPlan.Calendar(await CurrentAsync(ct));

    /// <summary>What the plant says of its oiling.</summary>
    public async Task<OilTerms> OilTermsAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return (await db.OilTerms.AsNoTracking().OrderBy(t => t.Id).FirstOrDefaultAsync(ct))?.ToTerms() ?? OilTerms.Default;
    }

    /// <summary>Changes what the plant says of its oiling. Dates move with it: review all chains afterwards.</summary>
    public async Task ChangeOilTermsAsync(OilTerms terms, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var row = await db.OilTerms.OrderBy(t => t.Id).FirstOrDefaultAsync(ct);
        if (row is null) db.OilTerms.Add(row = new OilTermsRow());
        row.Take(terms);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>Changes the settings. Dates move with them: review all chains afterwards.</summary>
    /// <exception cref="TimeZoneNotFoundException">There is no such time zone.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A shift or the utilisation cannot be.</exception>
    /// <exception cref="System.Text.Json.JsonException">The shifts or holidays cannot be read.</exception>
    public async Task ChangeAsync(Action<PlantRow> change, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var plant = await db.Plants.OrderBy(p => p.Id).FirstOrDefaultAsync(ct);
        if (plant is null) db.Plants.Add(plant = new PlantRow { Name = "Plant", TimeZone = "UTC" });
        change(plant);
        _ = ShiftPlan.Calendar(plant); // settings that make no calendar are not kept: nothing could be dated any more
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
