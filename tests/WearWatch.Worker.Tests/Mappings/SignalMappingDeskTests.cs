using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Telemetry;
using WearWatch.Worker.Tests.Telemetry;

namespace WearWatch.Worker.Tests.Mappings;

/// <summary>Mappings are kept by versions; what they read goes the way of all telemetry.</summary>
public sealed class SignalMappingDeskTests
{
    private static readonly long At = TestPlant.Start.AddMinutes(-5).ToUnixTimeSeconds();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_change_is_a_new_version_and_two_who_change_at_once_do_not_overwrite_each_other()
    {
        await using var plant = await TestPlant.OpenAsync();
        var desk = plant.Get<SignalMappingDesk>();
        await Mapped.SaveAsync(plant, Mapped.Row());
        var taken = await desk.SaveAsync(Mapped.Row(), "Eve", Ct);
        Assert.Contains("There is a mapping of this name", taken["Name"].ToString(), StringComparison.Ordinal);
        await Mapped.SaveAsync(plant, Mapped.Row(value: "$.h", version: 1));
        var late = await desk.SaveAsync(Mapped.Row(version: 1), "Eve", Ct);
        Assert.Contains("Somebody saved", late["Name"].ToString(), StringComparison.Ordinal);
        await using var db = plant.Db();
        Assert.Equal(
            [(1, "$.run.tenths", "Ada"), (2, "$.h", "Ada")],
            (await db.SignalMappings.OrderBy(m => m.Version).ToListAsync(Ct)).Select(m => (m.Version, m.ValuePath, m.SavedBy)));
        Assert.Equal(2, (await db.LatestMappings.SingleAsync(Ct)).Version);
        db.SignalMappings.Remove(await db.SignalMappings.FirstAsync(Ct));
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    [Fact]
    public async Task A_mapped_message_is_stored_once_and_one_that_cannot_be_read_waits_until_its_mapping_is_mended()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await Mapped.SaveAsync(plant, Mapped.Row());
        var good = Sent.Raw("site/A/press/C1/hours", $$"""{"run":{"tenths":182114},"t":{{At}}}""");
        var odd = Sent.Raw("site/A/press/C1/hours", $$"""{"h":18213,"t":{{At + 60}}}""");
        var desk = plant.Get<TelemetryDesk>();
        Assert.Equal(new TelemetryTaken(1, 1, 1), await desk.TakeAsync([good, good, odd], Ct));
        await using var db = plant.Db();
        var aside = await db.SetAside.SingleAsync(Ct);
        Assert.Equal("Nothing stands at $.run.tenths.", aside.Reason.ToString());
        Assert.NotNull(await plant.Get<SetAsideDesk>().ReleaseAsync(aside.Id, "Ada", Ct));
        await Mapped.SaveAsync(plant, Mapped.Row(value: "$.h", version: 1));
        Assert.Null(await plant.Get<SetAsideDesk>().ReleaseAsync(aside.Id, "Ada", Ct));
        Assert.Equal([18211.4, 1821.3], await db.Telemetry.OrderBy(t => t.Id).Select(t => t.Value).ToListAsync(Ct));
    }

    [Fact]
    public async Task A_message_that_tells_no_time_counts_from_its_arrival_and_a_topic_that_nobody_maps_is_set_aside()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await Mapped.SaveAsync(plant, Mapped.Row(form: WearWatch.Signals.TimeNotation.Arrival));
        var arrived = TestPlant.Start.AddMinutes(-2);
        var message = Sent.Raw("site/A/press/C1/hours", """{"run":{"tenths":10}}""") with { At = arrived };
        var taken = await plant.Get<TelemetryDesk>().TakeAsync([message, message, Sent.Raw("site/A/other", "{}")], Ct);
        Assert.Equal(new TelemetryTaken(1, 1, 1), taken);
        await using var db = plant.Db();
        Assert.Equal(arrived, (await db.Telemetry.SingleAsync(Ct)).At);
    }

    [Fact]
    public async Task What_is_heard_is_few_of_each_topic_and_a_listening_ends_by_itself()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (heard, desk) = (plant.Get<HeardMessages>(), plant.Get<ListeningDesk>());
        for (var i = 0; i < 5; i++) heard.Hear(Sent.Raw("site/x", $"{i}"));
        for (var i = 0; i < HeardMessages.MostTopics + 20; i++)
        {
            plant.Clock.Advance(TimeSpan.FromSeconds(1));
            heard.Hear(Sent.Raw($"many/{i}", "1"));
        }

        heard.Hear(Sent.Raw("long", new string('x', HeardMessages.LongestBytes + 1)));
        await heard.KeepAsync(Ct);
        await heard.KeepAsync(Ct);
        await using var db = plant.Db();
        Assert.Equal(HeardMessages.MostTopics, await db.HeardMessages.Select(h => h.Topic).Distinct().CountAsync(Ct));
        Assert.False(await db.HeardMessages.AnyAsync(h => h.Topic == "site/x" || h.Topic == "long", Ct));
        for (var i = 0; i < 5; i++) heard.Hear(Sent.Raw("site/x", $"{i}"));
        await heard.KeepAsync(Ct);
        Assert.Equal(["2", "3", "4"], (await db.HeardMessages.Where(h => h.Topic == "site/x").ToListAsync(Ct))
            .Select(h => System.Text.Encoding.UTF8.GetString(h.Payload)).Order());

        Assert.True((await desk.ListenAsync("site/{m}/hours", "Ada", Ct)).IsEmpty);
        Assert.False((await desk.ListenAsync("site/#/hours", "Ada", Ct)).IsEmpty);
        Assert.Equal(["site/+/hours"], await desk.FiltersAsync(Ct));
        plant.Clock.Advance(ListeningDesk.Lasts + TimeSpan.FromSeconds(1));
        Assert.Empty(await desk.FiltersAsync(Ct));
    }
}
