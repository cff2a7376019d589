using WearWatch.Chains.Families;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.ChainList;

/// <summary>A plant for questions about the list: one chain due, one within its limit, one of which nothing is known.</summary>
public sealed class ThreeChains : IAsyncLifetime
{
    public DashboardHost Host { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await using var db = await Host.OpenAsync();
        db.Chains.AddRange(
            A.Chain("K-1", "Press", "infeed"), A.Chain("K-2", "Drying", "drum 50% load"),
            A.Chain("K-3", "Press", "outfeed", "BL634", ChainFamily.Named("leaf")));
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        var reading = A.Reading(1);
        db.Readings.Add(reading);
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        db.Forecasts.AddRange(
            A.Forecast(1, Condition.PlanASwap, earlyInDays: 20, elongationPct: 2.4, lastReadingId: reading.Id),
            A.Forecast(1, Condition.SwapNow, latest: false),
            A.Forecast(2, Condition.WithinLimit, earlyInDays: 200, elongationPct: 0.8));
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync() => await Host.DisposeAsync();
}
