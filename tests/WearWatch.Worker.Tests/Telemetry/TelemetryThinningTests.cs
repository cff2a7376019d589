using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Tests.Telemetry;

public sealed class TelemetryThinningTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Old_messages_go_once_they_were_concluded_and_sent_on_and_their_sums_stay()
    {
        await using var plant = await TestPlant.OpenAsync(("Telemetry:RawDays", "7"), ("Telemetry:HourlyDays", "31"));
        await plant.AddChainAsync();
        await plant.Get<TelemetryDesk>().TakeAsync(
            [Sent.Temperature(20), Sent.Temperature(30), Sent.Temperature(40, at: TestPlant.Start.AddMinutes(59))], Ct);
        plant.Clock.Advance(TimeSpan.FromDays(8));
        Assert.Equal(0, await ThinAsync(plant)); // nothing was concluded from them yet

        await using var db = plant.Db();
        await db.TelemetryHours.ExecuteUpdateAsync(set => set.SetProperty(h => h.Concluded, h => h.Count), Ct);
        await db.Telemetry.Where(t => t.Value == 30)
            .ExecuteUpdateAsync(set => set.SetProperty(t => t.AwaitsForwarding, true), Ct);
        Assert.Equal(2, await ThinAsync(plant));
        Assert.Equal(30, (await db.Telemetry.SingleAsync(Ct)).Value); // it waits to be sent on

        plant.Clock.Advance(TimeSpan.FromDays(30));
        Assert.Equal(0, await ThinAsync(plant));
        Assert.Empty(await db.TelemetryHours.ToListAsync(Ct));
        var day = await db.TelemetryDays.SingleAsync(Ct);
        Assert.Equal((TestPlant.Start.Date, 3, 90, 20, 40), (day.Day.UtcDateTime, day.Count, day.Sum, day.Min, day.Max));
    }

    private static Task<int> ThinAsync(TestPlant plant) => plant.Get<TelemetryThinning>().RunOnceAsync(Ct);
}
