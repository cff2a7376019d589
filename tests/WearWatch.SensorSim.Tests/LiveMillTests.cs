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
        foreach (var fault in Enum.GetValues<LiveFault>().Except([.. others, .. SetCounters, .. SlippedLengths]))
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

    [Fact]
    public void A_counter_that_was_set_with_a_slip_runs_on_from_there_and_only_at_the_chain_that_is_named()
    {
        foreach (var fault in SetCounters)
        {
            var sound = Make().Between(Now, Now.AddHours(2)).ToList();
            var mill = Make();
            var told = mill.Between(Now, Now.AddHours(1)).Concat(mill.Between(Now.AddHours(1), Now.AddHours(2), fault,
                LiveMill.Chains[0])).ToList();
            var off = Counters(told, LiveMill.Chains[0]).Zip(Counters(sound, LiveMill.Chains[0]), (t, s) => t - s).ToList();

            Assert.All(off.Take(12), o => Assert.Equal(0, o));
            Assert.All(off.Skip(12), o => Assert.Equal(off[12], o, 0.011));
            Assert.True(Math.Abs(off[12]) > 1, $"{fault}: {off[12]} h");
            Assert.Equal(Counters(sound, LiveMill.Chains[1]), Counters(told, LiveMill.Chains[1]));
        }
    }

    [Fact]
    public void A_length_with_a_slip_is_sent_each_morning_and_only_from_the_chain_that_is_named()
    {
        var mill = Make();
        Assert.DoesNotContain(mill.Between(Now, Now.AddDays(1)), m => m.Topic.EndsWith("/length", StringComparison.Ordinal));
        var lengths = SlippedLengths.Select(fault =>
        {
            var told = Make().Between(Now, Now.AddDays(2), fault, LiveMill.Chains[0]).ToList();
            Assert.Empty(Told(told, LiveMill.Chains[1], "length"));
            var both = Told(told, LiveMill.Chains[0], "length").ToList();
            Assert.Equal(2, both.Count);
            return (Pitches: both[0].GetProperty("pitches").GetInt32(), Mm: both[0].GetProperty("length_mm").GetDouble());
        }).ToList();
        Assert.Single(lengths.Select(l => l.Pitches).Distinct());
        var (more, fewer) = (lengths[0].Mm, lengths[1].Mm);
        var right = (more + fewer) / 2;
        Assert.Equal(2.0 / lengths[0].Pitches, (more - fewer) / right, 1e-4);
        Assert.Equal(right / 10, lengths[2].Mm, 0.01);
        Assert.NotEqual(right, lengths[3].Mm, 0.5);
    }

    private static readonly LiveFault[] SetCounters =
    [
        LiveFault.CounterDigitsSwapped, LiveFault.CounterDigitMissing, LiveFault.CounterDigitTwice,
        LiveFault.CounterTenthsAsHours,
    ];

    private static readonly LiveFault[] SlippedLengths =
    [
        LiveFault.LengthOnePitchMore, LiveFault.LengthOnePitchFewer, LiveFault.LengthPointSlipped, LiveFault.LengthDigitsSwapped,
    ];

    private static LiveMill Make() => new(new Mill(Now, 7), "plant", 7);

    private static IEnumerable<double> Counters(IEnumerable<LiveMessage> messages, string chain) =>
        Told(messages, chain, "running").Select(m => m.GetProperty("counter_h").GetDouble());

    private static IEnumerable<JsonElement> Told(IEnumerable<LiveMessage> messages, string chain, string word) =>
        messages.Where(m => m.Topic == $"wearwatch/v1/plant/{chain}/{word}")
            .Select(m => JsonDocument.Parse(m.Payload).RootElement);
}
