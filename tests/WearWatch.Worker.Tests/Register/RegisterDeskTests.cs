using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Register;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Register;

public sealed class RegisterDeskTests : IAsyncLifetime
{
    private TestPlant plant = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private RegisterDesk Desk => plant.Get<RegisterDesk>();

    public async ValueTask InitializeAsync() => plant = await TestPlant.OpenAsync();

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Fact]
    public async Task A_new_chain_stands_in_the_register_is_assessed_and_its_entry_is_recorded()
    {
        var heard = new List<int>();
        plant.Get<PlantNews>().ChainsChanged += heard.AddRange;
        var kept = Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(Card(), "Vera", "new line", ct: Ct));
        await using var db = plant.Db();
        Assert.Equal(25.4, (await db.Chains.SingleAsync(Ct)).PitchMm);
        Assert.True(await db.Forecasts.AnyAsync(f => f.ChainId == kept.ChainId && f.IsLatest, Ct));
        Assert.Contains(kept.ChainId, heard);
        var change = await db.CardChanges.SingleAsync(Ct);
        Assert.Equal(
            (kept.ChainId, TestPlant.Start, "Vera", "chain", "", "C1", "new line"),
            (change.ChainId, change.At, change.By, change.Field, change.From, change.To, change.Why));
    }

    [Fact]
    public async Task A_name_is_taken_only_once_but_the_same_card_may_come_twice()
    {
        var first = Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(Card(), "Vera", ct: Ct));
        var again = Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(Card(), "Vera", ct: Ct));
        Assert.Equal((first.ChainId, 0), (again.ChainId, again.Changes.Count));
        Assert.Equal(["chain"], Fields(await Desk.AddAsync(Card() with { PitchMm = 19.05 }, "Vera", ct: Ct)));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" C1")]
    [InlineData("new")]
    [InlineData("a/b")]
    [InlineData("50%")]
    public async Task A_name_that_cannot_be_an_address_is_refused(string name) =>
        Assert.Equal(["chain"], Fields(await Desk.AddAsync(Card() with { Name = name }, "Vera", ct: Ct)).Distinct());

    [Fact]
    public async Task Each_changed_field_is_recorded_with_what_stood_there_by_whom_and_why()
    {
        var kept = await AddAsync();
        plant.Clock.Advance(TimeSpan.FromHours(1));
        var card = Card() with { SprocketTeeth = [17, 75], Duty = new Duty { SpeedMetresPerSecond = 1.5 } };
        Assert.IsType<RegisterAnswer.Kept>(await Desk.ChangeAsync(card, kept.Revision, "Otto", "drive was changed", ct: Ct));
        var changes = (await ChangesAsync()).Skip(1).ToList();
        Assert.Equal(
            [("speed_m_s", "", "1.5"), ("sprocket_teeth", "", "17 75")], changes.Select(c => (c.Field, c.From, c.To)).Order());
        Assert.All(changes, c => Assert.Equal(("Otto", "drive was changed", TestPlant.Start.AddHours(1)), (c.By, c.Why, c.At)));
    }

    [Fact]
    public async Task A_change_moves_the_limit_at_once()
    {
        var kept = await AddAsync();
        Assert.IsType<RegisterAnswer.Kept>(
            await Desk.ChangeAsync(Card() with { FixedCentres = true }, kept.Revision, "Otto", "as built", ct: Ct));
        await using var db = plant.Db();
        // 1.5 % at fixed centres: docs/references.md [8].
        Assert.Equal(1.5, (await db.Forecasts.SingleAsync(f => f.IsLatest, Ct)).LimitPct);
    }

    [Fact]
    public async Task What_another_person_changed_in_the_meantime_is_not_lost()
    {
        var kept = await AddAsync();
        Assert.IsType<RegisterAnswer.Kept>(
            await Desk.ChangeAsync(Card() with { Line = "Press" }, kept.Revision, "Otto", "moved", ct: Ct));
        var late = Assert.IsType<RegisterAnswer.Overtaken>(
            await Desk.ChangeAsync(Card() with { Pitches = 90 }, kept.Revision, "Vera", "counted", ct: Ct));
        Assert.Equal(("Press", "Otto", "line"), (late.Now.Line, Assert.Single(late.Since).By, late.Since[0].Field));
        Assert.Null(late.Now.Pitches);
        Assert.IsType<RegisterAnswer.Kept>(
            await Desk.ChangeAsync(late.Now.ToCard() with { Pitches = 90 }, late.Now.Revision, "Vera", "counted", ct: Ct));
    }

    [Fact]
    public async Task Of_many_who_save_at_once_one_is_kept_and_the_others_are_told()
    {
        var kept = await AddAsync();
        var answers = await Task.WhenAll(Enumerable.Range(1, 8).Select(n =>
            Task.Run(
                () => Desk.ChangeAsync(Card() with { Pitches = 90 + n }, kept.Revision, $"person {n}", "counted", ct: Ct), Ct)));
        Assert.Single(answers.OfType<RegisterAnswer.Kept>());
        Assert.Equal(7, answers.OfType<RegisterAnswer.Overtaken>().Count());
        Assert.Equal(2, (await ChangesAsync()).Count);
    }

    [Fact]
    public async Task The_same_change_sent_twice_is_recorded_once()
    {
        var kept = await AddAsync();
        var card = Card() with { Pitches = 90 };
        Assert.Single(
            Assert.IsType<RegisterAnswer.Kept>(await Desk.ChangeAsync(card, kept.Revision, "Vera", "counted", ct: Ct)).Changes);
        Assert.Empty(
            Assert.IsType<RegisterAnswer.Kept>(await Desk.ChangeAsync(card, kept.Revision, "Vera", "counted", ct: Ct)).Changes);
        Assert.Equal(2, (await ChangesAsync()).Count);
    }

    [Fact]
    public async Task A_limit_without_a_reason_and_a_change_without_who_and_why_are_refused()
    {
        var kept = await AddAsync();
        Assert.Equal(["by", "limit_set_reason", "why"],
            Fields(await Desk.ChangeAsync(Card() with { LimitPercent = 2 }, kept.Revision, " ", "", ct: Ct))
                .Order(StringComparer.Ordinal));
        Assert.Single(await ChangesAsync());
        var reasoned = Card() with { LimitPercent = 2, LimitSetReason = "loose centres" };
        Assert.IsType<RegisterAnswer.Kept>(await Desk.ChangeAsync(reasoned, kept.Revision, "Vera", "after the jam", ct: Ct));
    }

    [Fact]
    public async Task A_chain_cannot_have_been_fitted_in_the_future() =>
        Assert.Equal(
            ["fitted_at"], Fields(await Desk.AddAsync(Card() with { FittedAt = TestPlant.Start.AddDays(7) }, "Vera", ct: Ct)));

    [Fact]
    public async Task A_chain_that_is_not_in_the_register_cannot_be_changed() =>
        Assert.Equal(["chain"], Fields(await Desk.ChangeAsync(Card(), 1, "Vera", "counted", ct: Ct)));

    [Fact]
    public async Task A_file_writes_the_same_record_with_its_line_as_the_one_who_changed()
    {
        await plant.Import.ImportAsync([A.File("chains.csv", "chain,pitch_mm,line\nC1,25.4,Press\nC2,25.4,\n")], ct: Ct);
        await plant.Import.ImportAsync([A.File("mill.csv", "chain,pitch_mm,line\nC1,25.4,Saw\nC2,25.4,\n")], ct: Ct);
        Assert.Equal(
            [("chains.csv:2", "", "C1"), ("chains.csv:3", "", "C2"), ("mill.csv:2", "Press", "Saw")],
            (await ChangesAsync()).Select(c => (c.By.Replace(" (Ina)", "", StringComparison.Ordinal), c.From, c.To)));
    }

    [Fact]
    public async Task A_recorded_change_can_be_neither_changed_nor_deleted()
    {
        await AddAsync();
        await using var db = plant.Db();
        var change = await db.CardChanges.SingleAsync(Ct);
        db.Entry(change).Property(c => c.Why).CurrentValue = "other";
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        db.Entry(change).State = EntityState.Deleted;
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    private static ChainCard Card() => new() { Name = "C1", PitchMm = 25.4 };

    private static IEnumerable<string> Fields(RegisterAnswer answer) =>
        Assert.IsType<RegisterAnswer.Refused>(answer).Refusals.Select(r => r.Field);

    private async Task<RegisterAnswer.Kept> AddAsync() =>
        Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(Card(), "Vera", ct: Ct));

    private async Task<List<CardChangeRow>> ChangesAsync()
    {
        await using var db = plant.Db();
        return await db.CardChanges.AsNoTracking().OrderBy(c => c.Id).ToListAsync(Ct);
    }

    // docs/safety.md: only a planner takes the load from a chain's card, with the reason, and it stays in the record of changes.
    [Fact]
    public async Task Only_a_planner_says_of_a_chain_that_lifts_that_it_lifts_nothing_and_it_leaves_a_trace()
    {
        var link = Card() with { Name = "H1", Family = ChainFamily.Named("round_link"), PitchMm = 64 };
        var hoist = Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(link, "ann", ct: Ct));
        var off = link with { NotLiftingReason = "bucket elevator, nobody below" };
        var no = Assert.IsType<RegisterAnswer.Refused>(
            await Desk.ChangeAsync(off, hoist.Revision, "tom", "it is a conveyor", ct: Ct));
        Assert.Equal("not_lifting_reason", Assert.Single(no.Refusals).Field);
        Assert.IsType<RegisterAnswer.Refused>(await Desk.AddAsync(off with { Name = "H2" }, "tom", ct: Ct));
        var kept = Assert.IsType<RegisterAnswer.Kept>(
            await Desk.ChangeAsync(off, hoist.Revision, "ann", "it is a conveyor", isPlanner: true, ct: Ct));
        Assert.Equal(
            ("not_lifting_reason", "bucket elevator, nobody below", "it is a conveyor", "ann"),
            kept.Changes.Select(c => (c.Field, c.To, c.Why, c.By)).Single());

        var roller = Card() with { Name = "H3", Lifts = true };
        var lifts = Assert.IsType<RegisterAnswer.Kept>(await Desk.AddAsync(roller, "ann", ct: Ct));
        no = Assert.IsType<RegisterAnswer.Refused>(
            await Desk.ChangeAsync(roller with { Lifts = false }, lifts.Revision, "tom", "slip", ct: Ct));
        Assert.Equal("lifts", Assert.Single(no.Refusals).Field);
        var leaf = Card() with { Name = "H4", Family = ChainFamily.Named("leaf"), NotLiftingReason = "it only holds a door" };
        Assert.IsType<RegisterAnswer.Refused>(await Desk.AddAsync(leaf, "ann", isPlanner: true, ct: Ct));
    }
}
