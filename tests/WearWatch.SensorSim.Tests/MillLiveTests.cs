namespace WearWatch.SensorSim.Tests;

public sealed class MillLiveTests
{
    private readonly Mill mill = A.Mill();

    private MillLive Live => new(mill);

    [Fact]
    public void The_live_run_goes_on_where_the_history_ends_without_gap_or_overlap()
    {
        var whole = Live.ReadingsBetween(mill.StartsAt, mill.EndsAt.AddDays(60)).ToHashSet();
        var history = mill.Histories.SelectMany(h => h.Readings.Between(mill.StartsAt, mill.EndsAt)).ToList();
        var live = Live.ReadingsBetween(mill.EndsAt, mill.EndsAt.AddDays(60)).ToList();

        Assert.Equal(whole.Count, history.Count + live.Count);
        Assert.True(whole.SetEquals(history.Concat(live)));
    }

    [Fact]
    public void The_same_comes_however_time_is_cut()
    {
        var end = mill.EndsAt.AddDays(35);
        var whole = Live.ReadingsBetween(mill.EndsAt, end).ToList();
        var other = new MillLive(A.Mill());
        var pieces = Enumerable.Range(0, 35 * 8)
            .SelectMany(i => other.ReadingsBetween(mill.EndsAt.AddHours(3 * i), mill.EndsAt.AddHours(3 * (i + 1)))).ToList();

        Assert.Equal(whole, pieces);
    }

    [Fact]
    public void Readings_and_events_come_in_order_of_time()
    {
        var readings = Live.ReadingsBetween(mill.EndsAt, mill.EndsAt.AddYears(1)).Select(r => r.Record.TakenAt).ToList();
        var events = Live.EventsBetween(mill.EndsAt, mill.EndsAt.AddYears(1)).Select(e => e.At).ToList();

        Assert.Equal(readings.Order(), readings);
        Assert.Equal(events.Order(), events);
        Assert.InRange(readings.Count, 800, 2_500);
    }

    [Fact]
    public void Every_chain_past_its_limit_is_replaced_within_weeks()
    {
        var past = mill.Histories
            .Where(h => h.CurrentChain.HoursLeftAt(h.Span.EndHour) == 0).Select(h => h.Position.ChainName).ToList();
        var swapped = Live.EventsBetween(mill.EndsAt, mill.EndsAt.AddDays(60))
            .Where(e => e.Kind == MillEventKind.Replacement).Select(e => e.Chain).ToList();

        Assert.NotEmpty(past);
        Assert.Subset(swapped.ToHashSet(), past.ToHashSet());
    }

    [Fact]
    public void After_a_replacement_the_next_reading_is_of_a_new_chain()
    {
        var until = mill.EndsAt.AddYears(1);
        var readings = Live.ReadingsBetween(mill.EndsAt, until).ToLookup(r => r.Record.Chain);
        foreach (var swap in Live.EventsBetween(mill.EndsAt, until).Where(e => e.Kind == MillEventKind.Replacement))
        {
            var before = readings[swap.Chain].LastOrDefault(r => r.Record.TakenAt < swap.At);
            var after = readings[swap.Chain].FirstOrDefault(r => r.Record.TakenAt >= swap.At);
            if (before is not null && after is not null) Assert.True(after.Truth.ChainNumber > before.Truth.ChainNumber);
        }
    }

    [Fact]
    public void A_stretch_drops_its_events_and_readings_as_whole_files_and_an_empty_one_none()
    {
        var inbox = Directory.CreateTempSubdirectory("inbox-").FullName;
        try
        {
            var week = mill.EndsAt.AddDays(7);
            var dropped = Live.DropInto(inbox, mill.EndsAt, week);

            Assert.Equal(dropped, Directory.GetFiles(inbox).Order());
            Assert.Equal(
                Live.EventsBetween(mill.EndsAt, week).Select(e => e.Chain),
                CsvTable.Read(dropped[0]).Lines.Select(e => e["chain"]));
            Assert.Equal(
                Live.ReadingsBetween(mill.EndsAt, week).Select(r => (r.Record.Chain, r.Record.Length)),
                CsvTable.Read(dropped[1]).Lines.Select(r => (r["chain"], r["length"])));
            Assert.Empty(Live.DropInto(inbox, week, week));
        }
        finally
        {
            Directory.Delete(inbox, recursive: true);
        }
    }

    [Fact]
    public void An_empty_stretch_holds_nothing() => Assert.Empty(Live.ReadingsBetween(mill.EndsAt, mill.EndsAt));
}
