using WearWatch.Chains;
using WearWatch.Dashboard.Technician.Happenings;

namespace WearWatch.Dashboard.Tests.Happenings;

/// <summary>What a person may fill in, before anything is stored.</summary>
public sealed class DoneFormTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(ChainEventKind.Oiling, "100", "", "counter_h_before")]
    [InlineData(ChainEventKind.Oiling, "many", "", "counter_h_before")]
    [InlineData(ChainEventKind.MeterReset, "", "", "counter_h_before")]
    [InlineData(ChainEventKind.Oiling, "", "2099-01-01T00:00", "taken_at")]
    public async Task Every_slip_is_told_at_its_field(ChainEventKind kind, string counter, string at, string field)
    {
        var form = new DoneForm { Kind = kind, Counter = counter, At = at };
        Assert.Equal([field], form.Faults(await AskAsync("K-1")).Keys);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-2")]
    [InlineData("120")]
    [InlineData("two")]
    public async Task More_pitches_than_there_are_or_none_cannot_be_taken_out(string pitches) =>
        Assert.Equal(
            ["pitches_out"],
            new DoneForm { Kind = ChainEventKind.Shortened, PitchesOut = pitches }.Faults(await AskAsync("K-1")).Keys);

    [Theory]
    [InlineData(ChainEventKind.Replacement, "0", "21", "new_pitches")]
    [InlineData(ChainEventKind.Replacement, "many", "21", "new_pitches")]
    [InlineData(ChainEventKind.SprocketReplaced, "118", "4", "new_teeth")]
    [InlineData(ChainEventKind.SprocketReplaced, "118", "1001", "new_teeth")]
    public async Task A_count_of_what_was_fitted_that_cannot_be_is_told_at_its_field(
        ChainEventKind kind, string pitches, string teeth, string field) =>
        Assert.Equal(
            [field], new DoneForm { Kind = kind, NewPitches = pitches, NewTeeth = teeth }.Faults(await AskAsync("K-1")).Keys);

    [Fact]
    public async Task Of_something_done_earlier_the_counter_may_be_lower() =>
        Assert.Empty(new DoneForm { Kind = ChainEventKind.Oiling, Counter = "1500", At = "2026-02-10T06:00" }
            .Faults(await AskAsync("K-1")));

    [Fact]
    public async Task What_was_not_typed_is_told_as_now_by_nobody_named()
    {
        var chain = await AskAsync("K-1");
        var told = new DoneForm { Kind = ChainEventKind.Shortened, Note = " slack " }.ToEvent(chain, chain.Time.Now);
        Assert.Equal(
            (chain.Time.Now, null, 2, "slack", "dashboard"),
            (told.Told.At, told.Told.CounterBefore, told.Told.PitchesOut, told.Told.Note, told.ToldBy));
    }

    [Theory]
    [InlineData(ChainEventKind.Tensioned, false, true)]
    [InlineData(ChainEventKind.Tensioned, true, false)]
    [InlineData(ChainEventKind.Oiling, false, false)]
    public async Task The_take_up_is_asked_for_after_work_on_the_slack_where_there_is_one(
        ChainEventKind kind, bool fixedCentres, bool asks)
    {
        var chain = await AskAsync("K-1");
        var raw = chain.Raw with { Card = chain.Card with { FixedCentres = fixedCentres } };
        var form = new DoneForm { Kind = kind, TakeUp = "far" };
        Assert.Equal(asks ? ["take_up_mm"] : [], form.Faults(chain with { Raw = raw }).Keys);
    }

    [Fact]
    public async Task A_chain_that_nobody_knows_is_none() =>
        Assert.Null(await plant.Host.Get<DoneQuery>().AskAsync("nobody", Ct));

    private async Task<DoneChain> AskAsync(string name) => (await plant.Host.Get<DoneQuery>().AskAsync(name, Ct))!;
}
