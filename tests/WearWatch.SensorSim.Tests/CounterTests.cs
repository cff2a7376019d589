namespace WearWatch.SensorSim.Tests;

/// <summary>Hour counters, as the files tell them, against what was true.</summary>
public sealed class CounterTests(WrittenMill written) : IClassFixture<WrittenMill>
{
    /// <summary>The readings whose counter was written down as it showed, with what was true.</summary>
    private IEnumerable<(CsvLine First, CsvLine Second)> AsShown =>
        written.Readings.Lines.Zip(written.Truth.Lines).Where(r => r.Second["counter_slip"] == "None");

    // 0.3 % of some 3,500 that people read on: eleven, with a standard error of three.
    [Fact]
    public void Some_counters_were_read_wrongly_and_the_truth_says_how()
    {
        var slips = written.Readings.Lines.Zip(written.Truth.Lines).Where(r => r.Second["counter_slip"] != "None").ToList();

        Assert.InRange(slips.Count, 3, 25);
        Assert.All(slips, r => Assert.NotEqual("sensor", r.First["tool"]));
        Assert.All(slips, r => Assert.Equal("None", r.Second["slip"]));
        Assert.True(slips.Select(r => r.Second["counter_slip"]).Distinct().Count() > 1, "More than one kind occurs.");
    }

    [Fact]
    public void Counters_run_backwards_only_over_a_reset_that_the_events_or_the_truth_tell()
    {
        var resets = written.TruthOfEvents.Lines.Where(e => e["event"] == "meter_reset").ToLookup(e => e["chain"]);
        foreach (var chain in AsShown.Select(r => r.First).GroupBy(r => r["chain"]))
        {
            foreach (var (earlier, later) in chain.Zip(chain.Skip(1)))
            {
                if (later.Number("counter_h") >= earlier.Number("counter_h")) continue;
                Assert.Contains(
                    resets[chain.Key],
                    reset => reset.Moment("taken_at") > earlier.Moment("taken_at")
                        && reset.Moment("taken_at") <= later.Moment("taken_at"));
            }
        }
    }

    [Fact]
    public void Six_resets_are_recorded_and_two_forgotten()
    {
        var resets = written.TruthOfEvents.Lines.Where(e => e["event"] == "meter_reset").ToList();

        Assert.Equal(6, resets.Count(e => e["recorded"] == "1"));
        Assert.Equal(2, resets.Count(e => e["recorded"] == "0"));
        Assert.Equal(6, written.Events.Lines.Count(e => e["event"] == "meter_reset"));
    }

    [Fact]
    public void Between_two_readings_of_a_chain_the_counter_and_the_true_hours_run_alike()
    {
        var reset = written.TruthOfEvents.Lines.Where(e => e["event"] == "meter_reset").Select(e => e["chain"]).ToHashSet();
        var rows = AsShown.Where(r => !reset.Contains(r.First["chain"])).ToList();
        foreach (var chain in rows.GroupBy(r => (r.First["chain"], r.Second["chain_number"])))
        {
            foreach (var (earlier, later) in chain.Zip(chain.Skip(1)))
            {
                var counted = later.First.Number("counter_h") - earlier.First.Number("counter_h");
                var run = later.Second.Number("running_h") - earlier.Second.Number("running_h");
                Assert.InRange(counted - run, -1.02, 1.02); // a counter of whole hours cuts at both ends
            }
        }
    }

    [Fact]
    public void No_reading_is_taken_before_its_chain_was_fitted()
    {
        Assert.All(written.Truth.Lines, r => Assert.True(r.Number("running_h") >= 0));
        var fitted = written.Chains.Lines.Where(c => c["fitted_at"] != "").ToDictionary(c => c["chain"]);
        foreach (var reading in written.Readings.Lines.Where(r => fitted.ContainsKey(r["chain"])))
            Assert.True(reading.Moment("taken_at") > fitted[reading["chain"]].Moment("fitted_at"));
    }

    [Fact]
    public void Without_a_reset_no_counter_shows_less_than_at_the_fitting()
    {
        var reset = written.TruthOfEvents.Lines.Where(e => e["event"] == "meter_reset").Select(e => e["chain"]).ToHashSet();
        foreach (var chain in written.Chains.Lines.Where(c => c["fitted_counter_h"] != "" && !reset.Contains(c["chain"])))
        {
            Assert.All(
                AsShown.Select(r => r.First).Where(r => r["chain"] == chain["chain"]),
                r => Assert.True(r.Number("counter_h") >= chain.Number("fitted_counter_h")));
        }
    }

    [Fact]
    public void A_replacement_or_an_oiling_leaves_the_counter_as_it_is() => Assert.All(
        written.Events.Lines.Where(e => e["event"] != "meter_reset"),
        e => Assert.Equal(e["counter_h_before"], e["counter_h_after"]));
}
