using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Signals;
using WearWatch.Plant.Telemetry;
using WearWatch.SensorSim;
using WearWatch.SensorSim.Live;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Tests.Telemetry;

namespace WearWatch.Worker.Tests.Signals;

/// <summary>The slips of people that <c>demo --live --fault</c> makes, through telemetry: each asks for a person.</summary>
public sealed class LiveFaultTests
{
    private const int Seed = 7;

    /// <summary>The screen drive of the dry flakes: it has sensors, and a chain 16B-1 of 25.4 mm pitch.</summary>
    private const string Chain = "DR-11";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(LiveFault.CounterDigitsSwapped)]
    [InlineData(LiveFault.CounterDigitMissing)]
    [InlineData(LiveFault.CounterDigitTwice)]
    [InlineData(LiveFault.CounterTenthsAsHours)]
    public async Task A_counter_that_was_set_with_a_slip_raises_a_notice(LiveFault fault)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(Chain);
        await plant.Desk.TakeReadingAsync(A.Reading(Chain, 1_000, takenAt: TestPlant.Start.AddDays(-1)), Ct);
        var mill = Make();
        await HearAsync(plant, mill.Between(TestPlant.Start, TestPlant.Start.AddHours(20)), "running", 20);
        Assert.Empty(await NoticesAsync(plant, NoticeKind.CounterJumped));
        await HearAsync(
            plant, mill.Between(TestPlant.Start.AddHours(20), TestPlant.Start.AddHours(26), fault, Chain), "running", 20);
        Assert.Contains("jumped", Assert.Single(await NoticesAsync(plant, NoticeKind.CounterJumped)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LiveFault.LengthOnePitchMore, "over 17 pitches")]
    [InlineData(LiveFault.LengthOnePitchFewer, "no chain")]
    [InlineData(LiveFault.LengthPointSlipped, "no chain")]
    [InlineData(LiveFault.LengthDigitsSwapped, "two digits swapped")]
    public async Task A_length_with_a_slip_waits_with_what_it_may_have_been_or_that_no_chain_is_so(LiveFault fault, string why)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(Chain);
        var rightMm = (LengthMm(LiveFault.LengthOnePitchMore) + LengthMm(LiveFault.LengthOnePitchFewer)) / 2;
        for (var visit = 0; visit < 6; visit++)
        {
            var length = (rightMm * (1 - 0.0004 * (5 - visit))).ToString("0.00", CultureInfo.InvariantCulture);
            Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(
                A.Reading(Chain, 700 * visit, length: length, pitches: 16, takenAt: TestPlant.Start.AddDays(30 * (visit - 5)),
                    confirmed: true) with
                { Tool = Tool.Caliper }, Ct));
        }

        await HearAsync(plant, Make().Between(TestPlant.Start, TestPlant.Start.AddDays(1), fault, Chain), "length", 40);
        await using var db = plant.Db();
        var told = await db.Readings.OrderBy(r => r.Id).LastAsync(Ct);
        Assert.Equal((Tool.Sensor, ReadingStanding.Waiting), (told.Tool, told.Standing));
        Assert.Contains(why, told.WhyWaiting.ToString(), StringComparison.Ordinal);
        Assert.Single(await NoticesAsync(plant, NoticeKind.ReadingHeldBack));
    }

    private static LiveMill Make() => new(new Mill(TestPlant.Start, Seed), "plant", Seed);

    private static double LengthMm(LiveFault fault) => Make().Between(TestPlant.Start, TestPlant.Start.AddDays(1), fault, Chain)
        .Where(m => m.Topic.EndsWith("/length", StringComparison.Ordinal))
        .Select(m => JsonDocument.Parse(m.Payload).RootElement.GetProperty("length_mm").GetDouble()).Single();

    /// <summary>Takes what one kind of message tells of the chain, and concludes some hours later.</summary>
    private static async Task HearAsync(TestPlant plant, IEnumerable<LiveMessage> messages, string word, double hours)
    {
        plant.Clock.Advance(TimeSpan.FromHours(hours));
        await plant.Get<TelemetryDesk>().TakeAsync(
            [.. messages.Where(m => m.Topic.EndsWith($"/{Chain}/{word}", StringComparison.Ordinal))
                .Select(m => Sent.Raw(m.Topic, m.Payload))], Ct);
        await plant.Get<SignalDesk>().RunOnceAsync(Ct);
    }

    private static async Task<List<string>> NoticesAsync(TestPlant plant, NoticeKind kind)
    {
        await using var db = plant.Db();
        var open = await db.Notices.Where(n => n.Kind == kind && n.EndedAt == null).ToListAsync(Ct);
        return [.. open.Select(n => n.Why.ToString())];
    }
}
