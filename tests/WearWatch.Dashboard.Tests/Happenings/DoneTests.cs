using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Dashboard.Technician.Happenings;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Happenings;

public sealed class DoneTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        using var client = host.CreateClient();
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task An_oiling_sets_the_next_one_and_the_page_says_when()
    {
        var (before, after) = await RecordAsync("K-2", new DoneForm { Kind = ChainEventKind.Oiling, Counter = "4000" });
        Assert.True(before.Oiling.IsDue);
        // By hand about every 8 h of running: docs/references.md [13].
        Assert.Equal(8, after.Oiling.HoursLeft!.Value, 0.1);
        Assert.Matches(
            "^Next lubrication: .*, in 8 h of running", Assert.Single(DoneEffect.Words(ChainEventKind.Oiling, before, after)));
    }

    [Fact]
    public async Task The_lot_of_a_new_chain_is_kept_with_its_fitting_and_with_nothing_else()
    {
        await RecordAsync("K-2", new DoneForm { Kind = ChainEventKind.Replacement, Counter = "4000", Lot = " B-2 " });
        await RecordAsync("K-2", new DoneForm { Kind = ChainEventKind.Tensioned, Lot = "B-3" });
        await using var db = await host.OpenAsync();
        Assert.Equal(["B-2", ""], await db.Events.OrderByDescending(e => e.Kind == ChainEventKind.Replacement).Select(e => e.Lot)
            .Take(2).ToListAsync(Ct));
    }

    [Fact]
    public async Task A_look_at_the_oiler_sets_the_next_look()
    {
        var (before, after) = await RecordAsync("K-1", new DoneForm { Kind = ChainEventKind.Inspection });
        Assert.True(before.Oiling.IsDue);
        Assert.False(after.Oiling.IsDue);
        Assert.StartsWith("Next inspection of the lubricator: ",
            Assert.Single(DoneEffect.Words(ChainEventKind.Inspection, before, after)),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_chain_starts_at_no_hours()
    {
        var (before, after) = await RecordAsync("K-1", new DoneForm { Kind = ChainEventKind.Replacement });
        Assert.True(before.Assessment.HoursNow > 2800);
        Assert.Equal(0, after.Assessment.HoursNow, 0.1);
        Assert.Contains(
            "starts at 0 h", DoneEffect.Words(ChainEventKind.Replacement, before, after)[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pitches_taken_out_are_counted_off_and_wear_stays()
    {
        var (before, after) =
            await RecordAsync("K-1", new DoneForm { Kind = ChainEventKind.Shortened, PitchesOut = "2", Note = "slack" });
        Assert.Equal((120, 118), (before.PitchesNow, after.PitchesNow));
        Assert.Equal(before.Assessment.ElongationPercent, after.Assessment.ElongationPercent);
        Assert.StartsWith(
            "118 of 120 pitches", DoneEffect.Words(ChainEventKind.Shortened, before, after)[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_counter_leaves_the_chains_own_hours_running_on()
    {
        var form = new DoneForm
        {
            Kind = ChainEventKind.MeterReset,
            CounterAfter = "0",
            At = "2026-04-02T00:00",
            Counter = "2824",
        };
        var (before, after) = await RecordAsync("K-1", form);
        Assert.Equal(2824, before.Raw.Readings[^1].Counter!.Value.Hours + 24);
        Assert.Equal(0, after.LastCounterH);
        Assert.Equal(before.Assessment.HoursNow, after.Assessment.HoursNow, 1.0);
    }

    [Fact]
    public async Task Pressed_twice_it_is_recorded_once()
    {
        var chain = await AskAsync("K-1");
        var form = new DoneForm { Kind = ChainEventKind.Tensioned };
        await host.Get<IntakeDesk>().TakeEventAsync(form.ToEvent(chain, chain.Time.Now), Ct);
        var again = await host.Get<IntakeDesk>().TakeEventAsync(form.ToEvent(chain, chain.Time.Now.AddMinutes(1)), Ct);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(again).AlreadyKnown);
        await using var db = await host.OpenAsync();
        Assert.Equal(1, await db.Events.CountAsync(e => e.Kind == ChainEventKind.Tensioned, Ct));
    }

    [Fact]
    public async Task What_the_form_tells_of_a_replacement_stands_in_fields_of_their_own()
    {
        var form = new DoneForm
        {
            Kind = ChainEventKind.Replacement,
            Lot = "B-2",
            Broke = true,
            NewPitches = " 118 ",
            NewTeeth = "21",
            TakeUp = "12,5",
            PitchesOut = "4",
            Note = "seized",
        };
        await RecordAsync("K-1", form);
        await using var db = await host.OpenAsync();
        var row = await db.Events.SingleAsync(e => e.Kind == ChainEventKind.Replacement, Ct);
        Assert.Equal(("B-2", true, 12.5, null, "seized"), (row.Lot, row.Broke, row.TakeUpMm, row.PitchesOut, row.Note));
        Assert.Equal((118, null), (row.NewPitches, row.NewTeeth));
    }

    [Fact]
    public async Task The_teeth_of_a_new_sprocket_stand_in_a_field_of_their_own()
    {
        await RecordAsync("K-1", new DoneForm { Kind = ChainEventKind.SprocketReplaced, NewTeeth = "21", NewPitches = "118" });
        await using var db = await host.OpenAsync();
        var row = await db.Events.SingleAsync(e => e.Kind == ChainEventKind.SprocketReplaced, Ct);
        Assert.Equal((21, null), (row.NewTeeth, row.NewPitches));
    }

    private async Task<DoneChain> AskAsync(string name) => (await host.Get<DoneQuery>().AskAsync(name, Ct))!;

    private async Task<(DoneChain Before, DoneChain After)> RecordAsync(string name, DoneForm form)
    {
        var before = await AskAsync(name);
        Assert.Empty(form.Faults(before));
        Assert.IsType<IntakeAnswer.Taken>(await host.Get<IntakeDesk>().TakeEventAsync(form.ToEvent(before, before.Time.Now), Ct));
        return (before, await AskAsync(name));
    }
}
