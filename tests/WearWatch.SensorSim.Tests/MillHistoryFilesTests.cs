

namespace WearWatch.SensorSim.Tests;

/// <summary>The files as an importer sees them: the format of design, and nothing that cannot be in a mill.</summary>
public sealed class MillHistoryFilesTests(WrittenMill written) : IClassFixture<WrittenMill>
{
    [Fact]
    public void The_headers_are_those_of_the_file_formats()
    {
        Assert.Equal(
            "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct,load_rel,speed_m_s,"
            + "lubrication,dust,family,oiling_interval_h,lot,not_lifting_reason",
            written.Chains.Header);
        Assert.Equal("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c", written.Readings.Header);
        Assert.Equal(
            "chain,event,taken_at,counter_h_before,counter_h_after,lot,oil_method,oil_grade,oil_amount_ml,"
            + "broke,pitches_out,take_up_mm",
            written.Events.Header);
    }

    [Fact]
    public void Facts_stand_with_the_events_that_can_tell_them()
    {
        Assert.Equal(["2"], Told("pitches_out", "shortened"));
        Assert.Equal(["", "yes"], Told("broke", "replacement"));
        Assert.All(
            Told("take_up_mm", "tensioned").Concat(Told("take_up_mm", "shortened")),
            mm => Assert.InRange(int.Parse(mm, System.Globalization.CultureInfo.InvariantCulture), 0, 2000));
        Assert.All(
            written.Events.Lines.Where(e => e["event"] is "oiling" or "inspection"),
            e => Assert.Equal("", e["broke"] + e["pitches_out"] + e["take_up_mm"]));
    }

    private IEnumerable<string> Told(string fact, string happened) =>
        written.Events.Lines.Where(e => e["event"] == happened).Select(e => e[fact]).Distinct().Order();

    [Fact]
    public void The_sizes_told_are_those_of_the_files()
    {
        Assert.Equal(80, written.Size.Chains);
        Assert.Equal(
            new MillHistorySize(written.Chains.Lines.Count, written.Readings.Lines.Count, written.Events.Lines.Count),
            written.Size);
    }

    [Fact]
    public void Every_word_is_one_of_the_format()
    {
        AssertWords(["tape", "caliper", "sensor"], written.Readings, "tool");
        AssertWords(["mm", "in"], written.Readings, "unit");
        AssertWords(["auto", "manual", "poor", "dry"], written.Chains, "lubrication");
        AssertWords(["clean", "moderate", "heavy"], written.Chains, "dust");
        AssertWords(["replacement", "meter_reset", "oiling", "shortened", "tensioned", "inspection"], written.Events, "event");
    }

    [Fact]
    public void The_history_shows_every_tool_unit_event_and_more_than_one_place()
    {
        Assert.Equal(3, written.Readings.Lines.Select(r => r["tool"]).Distinct().Count());
        Assert.Equal(2, written.Readings.Lines.Select(r => r["unit"]).Distinct().Count());
        Assert.Equal(6, written.Events.Lines.Select(e => e["event"]).Distinct().Count());
        Assert.Equal(["", "A", "B", "C"], written.Readings.Lines.Select(r => r["place"]).Distinct().Order());
        Assert.Contains(written.Readings.Lines, r => r["length"].Contains('/', StringComparison.Ordinal));
        Assert.Contains(written.Readings.Lines, r => r["temperature_c"] == "");
        Assert.Contains(written.Readings.Lines, r => r.NumberOrNull("temperature_c") > 40);
    }

    [Fact]
    public void Every_row_names_a_chain_of_the_mill()
    {
        var names = written.Chains.Lines.Select(c => c["chain"]).ToHashSet();
        Assert.Subset(names, written.Readings.Lines.Select(r => r["chain"]).ToHashSet());
        Assert.Subset(names, written.Events.Lines.Select(e => e["chain"]).ToHashSet());
    }

    [Fact]
    public void Times_are_plant_time_and_lie_within_the_records()
    {
        foreach (var at in written.Readings.Lines.Concat(written.Events.Lines).Select(r => r.Moment("taken_at")))
        {
            Assert.InRange(at, written.Mill.StartsAt, written.Mill.EndsAt.AddTicks(-1));
            Assert.Equal(WearWatch.SensorSim.Running.MillClock.At(at).Offset, at.Offset);
        }
    }

    [Fact]
    public void Readings_and_events_of_a_chain_stand_in_the_order_in_which_they_happened()
    {
        foreach (var table in new[] { written.Readings, written.Events })
        {
            foreach (var chain in table.Lines.GroupBy(line => line["chain"]))
            {
                var times = chain.Select(line => line.Moment("taken_at")).ToList();
                Assert.Equal(times.Order(), times);
            }
        }
    }

    [Fact]
    public void No_row_stands_twice() => Assert.Equal(
        written.Readings.Lines.Count,
        written.Readings.Lines.Select(r => (r["chain"], r["taken_at"], r["place"])).Distinct().Count());

    [Fact]
    public void Rounds_come_every_two_to_eight_weeks_except_when_a_chain_is_new()
    {
        var gaps = written.Truth.Lines
            .GroupBy(r => (r["chain"], r["chain_number"]))
            .SelectMany(g => g.Select(r => r.Moment("taken_at").Date).Distinct().ToList() is var days
                ? days.Zip(days.Skip(1), (a, b) => (b - a).TotalDays)
                : [])
            .ToList();

        Assert.All(gaps, days => Assert.InRange(days, 9, 60));
        Assert.True(gaps.Average() is > 14 and < 56);
    }

    private static void AssertWords(HashSet<string> words, CsvTable table, string column) =>
        Assert.All(table.Lines, line => Assert.Contains(line[column], words));
}
