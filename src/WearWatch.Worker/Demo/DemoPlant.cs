using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.SensorSim;
using WearWatch.Storage;

namespace WearWatch.Worker.Demo;

/// <summary>The simulated mill, for whoever wants to look around without a plant.</summary>
public sealed class DemoPlant(
    DataFolder folder, IDbContextFactory<WearDb> database, PlantSettings plant, FileImport import, DemoRegister register,
    TimeProvider clock)
{
    private const int Seed = 7;

    /// <summary>So far ahead the calendar knows the mill's shutdowns.</summary>
    private const int YearsAhead = 5;

    private static readonly string[] Files = ["chains.csv", "events.csv", "readings.csv"];

    /// <summary>
    /// Loads the mill: its register, three years of readings and events up to now. Loading it again changes nothing.
    /// </summary>
    /// <returns>What was taken in; refused when the register holds a plant that is not the mill.</returns>
    public async Task<ImportReport> LoadAsync(IProgress<ImportProgress>? progress = null, CancellationToken ct = default)
    {
        if (await HasAnotherPlantAsync(ct)) return Refused();
        await plant.ChangeAsync(row =>
        {
            (row.Name, row.TimeZone, row.IsDemo) = (MillCalendar.MillName, MillCalendar.TimeZoneId, true);
            (row.Shifts, row.Utilisation) = (ShiftPlan.Text(Array.Empty<Shift>()), Math.Round(MillCalendar.Utilisation, 2));
            if (row.LawRegion == LawRegion.NotSet) row.LawRegion = LawRegion.Germany;
            var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
            row.Holidays =
                ShiftPlan.Text(MillCalendar.ShutdownDays(today.AddYears(-MillHistory.DefaultYears), today.AddYears(YearsAhead)));
        }, ct);
        await DemoWorkshop.EquipAsync(database, DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime), ct);
        var written = await Task.Run(Write, ct);
        var report = await import.ImportAsync(
            [.. Files.Select(f => ImportFile.OnDisk(Path.Combine(written, f), "demo"))], progress, ct);
        await register.FillAsync(ct);
        return report;
    }

    /// <summary>Whether the register is empty: only then the mill is of use.</summary>
    public async Task<bool> IsWelcomeAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return !await db.Chains.AnyAsync(ct);
    }

    private async Task<bool> HasAnotherPlantAsync(CancellationToken ct) =>
        !(await plant.CurrentAsync(ct)).IsDemo && !await IsWelcomeAsync(ct);

    /// <summary>
    /// Writes the mill's files once and keeps them, so that a load that was broken off goes on with the same mill.
    /// </summary>
    private string Write()
    {
        var kept = Path.Combine(folder.Root, "demo");
        if (Directory.Exists(kept)) return kept;
        var fresh = Path.Combine(folder.Root, "demo.new");
        if (Directory.Exists(fresh)) Directory.Delete(fresh, recursive: true);
        MillHistory.WriteTo(fresh, clock.GetUtcNow(), Seed);
        Directory.Move(fresh, kept);
        return kept;
    }

    private static ImportReport Refused() => new([new FileReport
    {
        Name = "demo",
        Kind = FileKind.Unknown,
        Refused = 1,
        Remarks =
        [
            new RowRemark(
                "demo", 0, "", $"The register holds a plant already. Load the demo mill into another, empty data folder.",
                RemarkKind.Refused),
        ],
        RemarkCount = 1,
    }]);
}
