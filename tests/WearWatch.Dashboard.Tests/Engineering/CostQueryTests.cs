using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Engineer;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Intake;
using WearWatch.Signals;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class CostQueryTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task What_a_lubricator_gave_counts_by_hour_and_by_day()
    {
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        var now = host.Get<TimeProvider>().GetUtcNow();
        await using (var db = await host.OpenAsync())
        {
            var chain = await db.Chains.Where(c => c.Name == "K-1").Select(c => c.Id).SingleAsync(Ct);
            db.TelemetryHours
                .Add(new() { ChainId = chain, Kind = TelemetryKind.Oiling, Hour = now.AddDays(-1), Count = 4, Sum = 2.4 });
            db.TelemetryDays
                .Add(new() { ChainId = chain, Kind = TelemetryKind.Oiling, Day = now.AddDays(-200), Count = 50, Sum = 30 });
            db.TelemetryDays
                .Add(new() { ChainId = chain, Kind = TelemetryKind.Oiling, Day = now.AddDays(-500), Count = 10, Sum = 7 });
            db.TelemetryDays
                .Add(new() { ChainId = chain, Kind = TelemetryKind.Temperature, Day = now.AddDays(-200), Count = 10, Sum = 500 });
            await db.SaveChangesAsync(Ct);
        }

        var (year, before) = (await host.Get<CostQuery>().AskAsync(card => LifeGrouping.Line.Of(card), Ct)).All;
        Assert.Equal(32.4, year.OilMl, 9);
        Assert.Equal(7, before.OilMl, 9);
    }
}
