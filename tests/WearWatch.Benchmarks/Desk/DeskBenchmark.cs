using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Benchmarks.Speed;
using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Benchmarks.Desk;

/// <summary>
/// How long the pages of the reliability engineer's desk take to answer over 10,000 chains with 40 readings each.
/// </summary>
/// <remarks>
/// Each page once cold (nothing of it worked out yet) and five times warm, on the clock and in processor time, which does not
/// count what else runs on the machine; beside it the processor time in SHA-256 sums of 16 MB, which the same machine makes in
/// the same run.
/// </remarks>
internal static class DeskBenchmark
{
    private const double MostSeconds = 1;
    private const int Warm = 5;

    private static readonly string[] Pages =
    [
        "/engineering/lives", "/engineering/lives?by=line", "/engineering/lives?by=lot", "/engineering/record",
            "/engineering/record?at=90&by=line",
        "/engineering/drivers", "/engineering/changes", "/engineering/costs?by=line",
            "/engineering/compare?by=line&a=Line%2001&b=Line%2002",
        "/engineering/report", "/engineering/data",
    ];

    public static async Task<bool> RunAsync(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-desk-");
        try
        {
            await using var host = new Desk(folder.FullName);
            await SeedAsync(host, output);
            using var client = host.CreateClient();
            // as the opening of the desk does
            await host.Services.GetRequiredService<LivesQuery>().AskAsync(LivesFilter.FromQuery(""), default);
            var bytes = new byte[1 << 24];
            var sum = Measured.Quickest(Warm, () => SHA256.HashData(bytes)).TotalSeconds;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"SHA-256 of 16 MB: {sum:0.000} s of processor time"));
            output.WriteLine($"{"page",-60} {"cold s",8} {"warm s",8} {"cpu s",8} {"in sums",8}");
            var kept = true;
            foreach (var page in Pages)
            {
                var cold = await SecondsAsync(client, page);
                var warm = new List<(double Wall, double Processor)>();
                for (var i = 0; i < Warm; i++) warm.Add(await SecondsAsync(client, page));
                var (wall, processor) = (warm.Min(w => w.Wall), warm.Min(w => w.Processor));
                kept &= cold.Wall <= MostSeconds && processor <= MostSeconds;
                output.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{page,-60} {cold.Wall,8:0.000} {wall,8:0.000} {processor,8:0.000} {processor / sum,8:0.0}"));
            }

            return kept;
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    private static async Task SeedAsync(Desk host, TextWriter output)
    {
        var watch = Stopwatch.StartNew();
        using var client = host.CreateClient(); // starts the host, which opens the database
        await using (var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync())
            await LargeFleet.SeedAsync(db, TimeProvider.System.GetUtcNow());
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{LargeFleet.Chains} chains with {LargeFleet.ReadingsEach} readings each put in: {watch.Elapsed.TotalSeconds:0} s"));
        watch.Restart();
        await host.Services.GetRequiredService<FleetModels>().TrainAsync();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"fleet model trained (the night's work): {watch.Elapsed.TotalSeconds:0} s"));
        watch.Restart();
        await host.Services.GetRequiredService<WearWatch.Plant.Books.LifeBook>().ReadAsync(default);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"lives of all chains read (once after the start): {watch.Elapsed.TotalSeconds:0} s"));
    }

    private static async Task<(double Wall, double Processor)> SecondsAsync(HttpClient client, string page)
    {
        var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        var text = await client.GetStringAsync(page);
        return text.Contains("could not be drawn", StringComparison.Ordinal)
            ? throw new InvalidOperationException($"{page} could not be drawn.")
            : (watch.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
    }

    /// <summary>The dashboard in this process, its jobs idle.</summary>
    private sealed class Desk(string folder) : WebApplicationFactory<EngineerOpening>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseEnvironment("Development").UseContentRoot(AppContext.BaseDirectory);
            builder.UseSetting("WearWatch:DataFolder", folder);
            builder.UseSetting("WearWatch:ReviewEvery", "23:00:00");
            builder.UseSetting("Logging:LogLevel:Default", "Warning");
        }
    }
}
