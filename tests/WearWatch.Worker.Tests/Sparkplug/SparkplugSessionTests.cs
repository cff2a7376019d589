using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage.Rows;
using static WearWatch.Worker.Tests.Sparkplug.SparkplugMessage;

namespace WearWatch.Worker.Tests.Sparkplug;

/// <summary>Births, deaths, aliases and numbers of an edge node, through the desk that takes telemetry in.</summary>
public sealed class SparkplugSessionTests
{
    private static readonly DateTimeOffset At = TestPlant.Start.AddMinutes(-30);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Births_name_what_aliases_stand_for_and_both_lead_hours_to_their_chains()
    {
        await using var plant = await MappedAsync();
        await TakeAsync(
            plant, NodeBirth(1, 100, At), DeviceBirth(500, At, 1), NodeData(100.5, At.AddMinutes(1), 2),
            DeviceData(500.5, At.AddMinutes(2), 3));
        await using var db = plant.Db();
        Assert.Equal(
            [("N1", 100.0), ("N1", 100.5), ("PLC", 500.0), ("PLC", 500.5)],
            (await db.Telemetry.Join(db.Chains, t => t.ChainId, c => c.Id, (t, c) => new { c.Name, t.Value })
                .OrderBy(x => x.Name).ThenBy(x => x.Value).ToListAsync(Ct)).Select(x => (x.Name, x.Value)));
        Assert.Equal((true, false, 3), await StandsAsync(plant));
        Assert.All(await db.SparkplugMetrics.ToListAsync(Ct), m => Assert.NotNull(m.ChainId));
    }

    [Fact]
    public async Task A_second_delivery_of_everything_changes_no_hour()
    {
        await using var plant = await MappedAsync();
        Arrival[] all = [NodeBirth(1, 100, At), NodeData(100.5, At.AddMinutes(1), 1)];
        Assert.Equal(new TelemetryTaken(2, 0, 0), await TakeAsync(plant, all));
        Assert.Equal(new TelemetryTaken(0, 2, 0), await TakeAsync(plant, all));
    }

    [Fact]
    public async Task A_number_that_is_missing_asks_for_births_but_loses_nothing_that_came_and_255_is_followed_by_0()
    {
        await using var plant = await MappedAsync();
        await TakeAsync(
            plant, NodeBirth(1, 100, At, seq: 254), NodeData(101, At.AddMinutes(1), 255), NodeData(102, At.AddMinutes(2), 0));
        Assert.Equal((true, false, 0), await StandsAsync(plant));
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(plant, NodeData(104, At.AddMinutes(4), 2)));
        Assert.Equal((true, true, 2), await StandsAsync(plant));
        // The one that was missing comes late: it is taken, and the count does not go back.
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(plant, NodeData(103, At.AddMinutes(3), 1)));
        Assert.Equal((true, true, 2), await StandsAsync(plant));
        await TakeAsync(plant, NodeBirth(1, 105, At.AddMinutes(5)));
        Assert.Equal((true, false, 0), await StandsAsync(plant));
    }

    [Fact]
    public async Task Data_without_a_birth_and_aliases_that_no_birth_named_are_set_aside_and_ask_for_births()
    {
        await using var plant = await MappedAsync();
        Assert.Equal(new TelemetryTaken(0, 0, 1), await TakeAsync(plant, NodeData(99, At, 9)));
        Assert.Equal((false, true, null), await StandsAsync(plant));
        await TakeAsync(plant, NodeBirth(1, 100, At.AddMinutes(1)));
        Assert.Equal(new TelemetryTaken(0, 0, 1), await TakeAsync(plant, NodeData(101, At.AddMinutes(2), 1, alias: 77)));
        Assert.Equal((true, true, 1), await StandsAsync(plant));
    }

    [Fact]
    public async Task The_alias_of_a_former_birth_never_leads_a_value_astray()
    {
        await using var plant = await MappedAsync();
        await TakeAsync(plant, NodeBirth(1, 100, At), NodeBirth(2, 200, At.AddMinutes(5), alias: 4));
        Assert.Equal(new TelemetryTaken(0, 0, 1), await TakeAsync(plant, NodeData(101, At.AddMinutes(6), 1, alias: 1)));
        Assert.Equal(new TelemetryTaken(0, 0, 1), await TakeAsync(plant, NodeData(101, At.AddMinutes(1), 1, alias: 4)));
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(plant, NodeData(201, At.AddMinutes(7), 2, alias: 4)));
    }

    [Fact]
    public async Task A_death_makes_values_stale_one_of_an_older_session_does_not_and_a_birth_brings_the_node_back()
    {
        await using var plant = await MappedAsync();
        await TakeAsync(plant, NodeBirth(2, 100, At), DeviceBirth(500, At, 1), NodeDeath(1, At.AddMinutes(1)));
        Assert.True((await StandsAsync(plant)).IsOnline);
        await TakeAsync(plant, NodeDeath(2, At.AddMinutes(2)));
        Assert.False((await StandsAsync(plant)).IsOnline);
        await using var db = plant.Db();
        Assert.All(await db.SparkplugMetrics.ToListAsync(Ct), m => Assert.True(m.IsStale));
        await TakeAsync(plant, NodeBirth(3, 101, At.AddMinutes(3)));
        // The device is born after its node: until then its alias says nothing.
        Assert.Equal(new TelemetryTaken(0, 0, 1), await TakeAsync(plant, DeviceData(501, At.AddMinutes(4), 1)));
        await TakeAsync(plant, DeviceBirth(501, At.AddMinutes(5), 2));
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(plant, DeviceData(502, At.AddMinutes(6), 3)));
        await TakeAsync(plant, Of("DDEATH/N1/PLC", At.AddMinutes(7), 4));
        await using var after = plant.Db();
        Assert.Equal([("", false), ("PLC", true)],
            (await after.SparkplugMetrics.OrderBy(m => m.Device).ToListAsync(Ct)).Select(m => (m.Device, m.IsStale)));
    }

    [Fact]
    public async Task A_name_that_cannot_be_kept_holds_no_message_up()
    {
        await using var plant = await MappedAsync();
        var chance = new Random(1);
        // Of different characters: a text of one is packed until it fits.
        var longest = string.Concat(Enumerable.Range(0, 9_000).Select(_ => (char)chance.Next(0x4e00, 0x9fff)));
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(
            plant,
            Of("NBIRTH/N1", At, 0, ("Drive/Hours", 1, 100.0), ("Drive\0", 2, 1.0), (longest, 3, 1.0)),
            Of($"NBIRTH/{longest}", At, 0, ("Drive/Hours", 1, 100.0))));
        await using var db = plant.Db();
        Assert.Equal(["Drive/Hours", "Drive\uFFFD", longest[..400]],
            await db.SparkplugMetrics.OrderBy(m => m.Alias).Select(m => m.Name).ToListAsync(Ct));
    }

    [Fact]
    public async Task Births_are_asked_for_once_in_ten_seconds_by_one_process_only()
    {
        await using var plant = await MappedAsync();
        var sessions = plant.Get<SparkplugSessions>();
        await TakeAsync(plant, NodeData(99, At, 9));
        Assert.Single(await sessions.ToAskAsync(Ct));
        Assert.Empty(await sessions.ToAskAsync(Ct));
        plant.Clock.Advance(SparkplugSessions.BetweenAsks + TimeSpan.FromSeconds(1));
        Assert.Single(await sessions.ToAskAsync(Ct));
        await TakeAsync(plant, NodeBirth(1, 100, At));
        plant.Clock.Advance(SparkplugSessions.BetweenAsks + TimeSpan.FromSeconds(1));
        Assert.Empty(await sessions.ToAskAsync(Ct));
        await sessions.ForgetAsync(Ct);
        Assert.Single(await sessions.ToAskAsync(Ct));
    }

    /// <summary>The node's own hours go to the chain N1, its device's to the chain PLC.</summary>
    private static async Task<TestPlant> MappedAsync()
    {
        var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync("N1");
        await plant.AddChainAsync("PLC");
        foreach (var (topic, chain) in new[] { ("Mill/{node}", "{node}"), ("Mill/+/{device}", "{device}") })
            Assert.Empty(await plant.Get<SignalMappingDesk>().SaveAsync(
                new SignalMappingRow
                {
                    Name = chain,
                    Source = SignalSource.SparkplugMetric,
                    Topic = topic,
                    ValuePath = "Drive/Hours",
                    Chain = chain,
                    SavedBy = "",
                }, "Ada", Ct));
        return plant;
    }

    private static async Task<(bool IsOnline, bool WantsBirth, int? Seq)> StandsAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        var node = await db.SparkplugNodes.SingleAsync(Ct);
        return (node.IsOnline, node.WantsBirth, node.Seq);
    }

    private static Task<TelemetryTaken> TakeAsync(TestPlant plant, params Arrival[] arrivals) =>
        plant.Get<TelemetryDesk>().TakeAsync(arrivals, Ct);
}
