using System.Text.Json;
using WearWatch.SensorSim.Live;

namespace WearWatch.SensorSim.Tests;

public sealed class LiveMillTests
{
    private static readonly DateTimeOffset Now = new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Machines_say_each_thing_once_however_time_is_cut()
    {
        var whole = Make().Between(Now, Now.AddHours(2)).Select(m => (m.At, m.Topic)).ToList();
        var mill = Make();
        var cut = Enumerable.Range(0, 8).SelectMany(i => mill.Between(Now.AddMinutes(15 * i), Now.AddMinutes(15 * (i + 1))))
            .Select(m => (m.At, m.Topic)).ToList();
        Assert.Equal(whole, cut);
        Assert.Equal(whole.Count, whole.Distinct().Count());
        Assert.Equal(LiveMill.Chains, Make().Positions.Select(p => p.Chain));
        // Counter and temperature each five minutes, passes each fifteen, oil each hour.
        Assert.All(LiveMill.Chains,
            chain => Assert.Equal(24 + 24 + 8 + 2, whole.Count(m => m.Topic.Contains($"/{chain}/", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_counter_that_is_made_to_stop_stands_while_the_line_runs_on_and_only_at_the_chain_that_is_named()
    {
        var mill = Make();
        Assert.Equal(12, Counters(mill.Between(Now, Now.AddHours(1)), LiveMill.Chains[0]).Distinct().Count());
        var faulty = mill.Between(Now.AddHours(1), Now.AddHours(3), LiveFault.StoppedCounter, LiveMill.Chains[0]).ToList();
        Assert.Single(Counters(faulty, LiveMill.Chains[0]).Distinct());
        Assert.Equal(24, Counters(faulty, LiveMill.Chains[1]).Distinct().Count());
    }

    [Fact]
    public void A_blocked_lubricator_strokes_without_oil_and_a_fifth_of_the_pulses_can_be_missed()
    {
        Assert.All(Told(Make().Between(Now, Now.AddHours(2), LiveFault.BlockedLubricator, LiveMill.Chains[0]), LiveMill.Chains[0],
            "oiling"), m => Assert.Equal(0, m.GetProperty("amount_cm3").GetDouble()));
        var sound = Passes(LiveFault.None);
        // The fastest chain sends some 7,000 pulses in four hours: five deviations of a fifth of them are 0.025 of all.
        Assert.Equal(0.8, Passes(LiveFault.MissedPulses) / (double)sound, 0.025);

        static int Passes(LiveFault fault) =>
            Told(Make().Between(Now, Now.AddHours(4), fault, LiveMill.Chains[^1]), LiveMill.Chains[^1], "passes")
                .Sum(m => m.GetProperty("first_us").GetArrayLength());
    }

    [Fact]
    public void Every_fault_of_the_sensors_changes_what_they_tell_and_only_at_the_chain_that_is_named()
    {
        var sound = Passes(LiveFault.None);
        LiveFault[] others = [LiveFault.None, LiveFault.StoppedCounter, LiveFault.BlockedLubricator];
        foreach (var fault in Enum.GetValues<LiveFault>().Except(others))
        {
            var told = Passes(fault);
            Assert.NotEqual(sound[0], told[0]);
            Assert.Equal(sound[1], told[1]);
        }

        string[] Passes(LiveFault fault)
        {
            var told = Make().Between(Now, Now.AddHours(1), fault, LiveMill.Chains[0]).ToList();
            return [.. LiveMill.Chains.Take(2).Select(
                chain => string.Concat(Told(told, chain, "passes").Select(m => m.ToString())))];
        }
    }

    private static LiveMill Make() => new(new Mill(Now, 7), "plant", 7);

    private static IEnumerable<double> Counters(IEnumerable<LiveMessage> messages, string chain) =>
        Told(messages, chain, "running").Select(m => m.GetProperty("counter_h").GetDouble());

    private static IEnumerable<JsonElement> Told(IEnumerable<LiveMessage> messages, string chain, string word) =>
        messages.Where(m => m.Topic == $"wearwatch/v1/plant/{chain}/{word}")
            .Select(m => JsonDocument.Parse(m.Payload).RootElement);
}
