using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Engines;

namespace WearWatch.Benchmarks.Decade;

/// <summary>How large the memory of 1,000 chains is after ten years, part by part. A figure of docs/operating.md.</summary>
internal static class DecadeBenchmark
{
    private const double MostGigabytes = 5;

    public static async Task<bool> RunAsync(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-decade-");
        try
        {
            var store = WearStore.InSqlite(Path.Combine(folder.FullName, "wearwatch.db"), pooling: false);
            await store.PrepareAsync();
            await using var db = store.CreateDbContext();
            await db.Database.OpenConnectionAsync();
            var plant = new DecadePlant(db, TimeProvider.System.GetUtcNow());
            (string Name, Func<Task> Fill)[] parts =
            [
                ("register", plant.RegisterAsync), ("readings", plant.ReadingsAsync), ("lubrications", plant.LubricationsAsync),
                ("replacements", plant.ReplacementsAsync), ("inspections", plant.InspectionsAsync),
                ("notices", plant.NoticesAsync), ("forecasts", plant.ForecastsAsync), ("telemetry", plant.TelemetryAsync),
            ];
            var before = 0.0;
            foreach (var (name, fill) in parts)
            {
                await fill();
                var now = await GigabytesAsync(db);
                await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{name,-14} {now - before,8:0.000} GB"));
                await output.FlushAsync();
                before = now;
            }

            var gone = await new ForecastThinning(store, TimeProvider.System).RunOnceAsync();
            var forecasts = await db.Forecasts.CountAsync();
            await output.WriteLineAsync(string.Create(
                CultureInfo.InvariantCulture,
                $"{DecadePlant.Chains} chains, {DecadePlant.Years} years: {before:0.00} GB (bar {MostGigabytes:0.0}); "
                + $"{forecasts} forecasts are left, {gone} went"));
            return before <= MostGigabytes && gone <= DecadePlant.Chains;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<double> GigabytesAsync(WearDb db)
    {
        var sizes = await db.Database.SqlQueryRaw<long>(
            "SELECT page_count * page_size AS Value FROM pragma_page_count(), pragma_page_size()").ToListAsync();
        return sizes[0] / 1e9;
    }
}
