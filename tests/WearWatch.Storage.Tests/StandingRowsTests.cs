using WearWatch.Chains;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

public sealed class StandingRowsTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_newest_correction_stands_at_the_place_of_the_reading_that_it_corrects()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var first = await store.AddAsync(A.Reading(chain, counterH: 100));
        await store.AddAsync(A.Reading(chain, counterH: 200));
        var better = await store.AddAsync(A.Reading(chain, counterH: 110, corrects: first.Id));
        await store.AddAsync(A.Reading(chain, counterH: 120, corrects: better.Id));
        await using var db = store.CreateDbContext();
        Assert.Equal([120.0, 200.0], (await db.StandingReadingsAsync(chain.Id, Ct)).Select(r => r.CounterH!.Value));
    }

    [Fact]
    public async Task A_withdrawn_reading_does_not_count()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var wrong = await store.AddAsync(A.Reading(chain, counterH: 100));
        await store.AddAsync(A.Reading(chain, counterH: 200));
        await store.AddAsync(A.Reading(chain, counterH: 100, corrects: wrong.Id, withdraws: true));
        await using var db = store.CreateDbContext();
        Assert.Equal([200.0], (await db.StandingReadingsAsync(chain.Id, Ct)).Select(r => r.CounterH!.Value));
    }

    [Fact]
    public async Task A_waiting_reading_counts_as_soon_as_it_is_accepted()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var doubted = await store.AddAsync(A.Reading(chain, standing: ReadingStanding.Waiting));
        await using var db = store.CreateDbContext();
        var before = (await RawChain.LoadAsync(db, [chain.Id], Ct)).Single();
        Assert.Empty(before.ReadingRows);
        Assert.Equal(doubted.Id, Assert.Single(before.WaitingRows).Id);

        var yes = await store.AddAsync(A.Reading(chain, corrects: doubted.Id));
        var after = (await RawChain.LoadAsync(db, [chain.Id], Ct)).Single();
        Assert.Equal(yes.Id, Assert.Single(after.ReadingRows).Id);
        Assert.Empty(after.WaitingRows);
    }

    [Fact]
    public async Task A_reading_that_arrives_late_stands_where_its_date_puts_it()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await store.AddAsync(A.Reading(chain, counterH: 100, takenAt: Day(1)));
        await store.AddAsync(A.Reading(chain, counterH: 300, takenAt: Day(3)));
        await store.AddAsync(A.Reading(chain, counterH: 310));
        await store.AddAsync(A.Reading(chain, counterH: 200, takenAt: Day(2)));
        await using var db = store.CreateDbContext();
        Assert.Equal([100.0, 200, 300, 310], (await db.StandingReadingsAsync(chain.Id, Ct)).Select(r => r.CounterH!.Value));
    }

    [Fact]
    public async Task Readings_without_dates_stand_in_the_order_in_which_they_arrived_though_a_counter_falls()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        foreach (var h in new[] { 900.0, 1000, 20, 120 }) await store.AddAsync(A.Reading(chain, counterH: h));
        await using var db = store.CreateDbContext();
        Assert.Equal([900.0, 1000, 20, 120], (await db.StandingReadingsAsync(chain.Id, Ct)).Select(r => r.CounterH!.Value));
    }

    [Fact]
    public async Task A_withdrawn_event_did_not_happen()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await using var db = store.CreateDbContext();
        var (oiling, reset) = (A.Event(chain), A.Event(chain, ChainEventKind.MeterReset));
        db.Events.AddRange(oiling, reset);
        await db.SaveChangesAsync(Ct);
        db.Events.Add(A.Event(chain, corrects: oiling.Id, withdraws: true));
        await db.SaveChangesAsync(Ct);
        Assert.Equal(ChainEventKind.MeterReset, Assert.Single(await db.StandingEventsAsync(chain.Id, Ct)).Kind);
    }

    [Fact]
    public async Task The_stamp_of_a_chain_changes_with_everything_that_is_told_of_it()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await store.AddAsync(A.Reading(await store.AddChainAsync("another")));
        await using var db = store.CreateDbContext();
        var stamps = new List<RawStamp> { (await RawStamp.OfAsync(db, [chain.Id], Ct))[chain.Id] };
        await store.AddAsync(A.Reading(chain));
        stamps.Add((await RawStamp.OfAsync(db, [chain.Id], Ct))[chain.Id]);
        db.Events.Add(A.Event(chain));
        (await db.Chains.FindAsync([chain.Id], Ct))!.Take(chain.ToCard());
        await db.SaveChangesAsync(Ct);
        stamps.Add((await RawStamp.OfAsync(db, [chain.Id], Ct))[chain.Id]);
        Assert.Equal(3, stamps.Distinct().Count());
        Assert.Equal(stamps[^1], (await RawChain.LoadAsync(db, [chain.Id], Ct)).Single().Stamp);
    }

    private static DateTimeOffset Day(int day) => new(2026, 1, day, 6, 0, 0, TimeSpan.Zero);
}
