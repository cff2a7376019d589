using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

public sealed class AppendOnlyTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_cannot_be_deleted()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var row = await store.AddAsync(A.Reading(await store.AddChainAsync()));
        await using var db = store.CreateDbContext();
        db.Readings.Remove(await db.Readings.SingleAsync(r => r.Id == row.Id, Ct));
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        Assert.Throws<InvalidOperationException>(() => db.SaveChanges());
    }

    [Fact]
    public async Task A_reading_cannot_be_changed()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var row = await store.AddAsync(A.Reading(await store.AddChainAsync()));
        await using var db = store.CreateDbContext();
        db.Entry(await db.Readings.SingleAsync(r => r.Id == row.Id, Ct)).Property(r => r.LengthMm).CurrentValue = 1000;
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        Assert.Contains("LengthMm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_event_can_be_neither_changed_nor_deleted()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await using var db = store.CreateDbContext();
        var row = A.Event(chain);
        db.Events.Add(row);
        await db.SaveChangesAsync(Ct);
        db.Entry(row).Property(e => e.Note).CurrentValue = "changed";
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        db.Entry(row).State = EntityState.Deleted;
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    [Fact]
    public async Task Of_a_forecast_only_whether_it_is_the_newest_can_be_changed()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await using var db = store.CreateDbContext();
        var row = A.Forecast(chain);
        db.Forecasts.Add(row);
        await db.SaveChangesAsync(Ct);
        row.IsLatest = false;
        await db.SaveChangesAsync(Ct);
        db.Entry(row).Property(f => f.LimitPct).CurrentValue = 2;
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    [Fact]
    public async Task What_stands_in_the_register_of_lifting_chains_is_only_ever_added_to()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await using var db = store.CreateDbContext();
        var step = new LiftingStepRow
        {
            ChainId = chain.Id,
            Key = "q1",
            Kind = LiftingStepKind.Quarantined,
            By = "Ina",
            Reason = "a plate is cracked",
        };
        var appointment = new AppointmentRow
        {
            Person = "Ola",
            Qualification = "trained by the maker",
            From = new DateOnly(2026, 1, 1),
            Until = new DateOnly(2027, 12, 31),
            AppointedBy = "the plant's head",
        };
        db.AddRange(step, appointment);
        await db.SaveChangesAsync(Ct);
        db.Entry(step).Property(s => s.Reason).CurrentValue = "nothing";
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        db.Entry(step).State = EntityState.Unchanged;
        db.Entry(appointment).Property(a => a.Until).CurrentValue = new DateOnly(2040, 1, 1);
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        db.Entry(appointment).State = EntityState.Deleted;
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    [Fact]
    public async Task The_register_can_be_changed()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        await using (var db = store.CreateDbContext())
        {
            (await db.Chains.SingleAsync(c => c.Id == chain.Id, Ct)).Take(chain.ToCard() with { LimitPercent = 2 });
            await db.SaveChangesAsync(Ct);
        }

        await using var after = store.CreateDbContext();
        var kept = await after.Chains.SingleAsync(Ct);
        Assert.Equal((2.0, 1), (kept.LimitPct, kept.Revision));
    }

    [Fact]
    public async Task The_same_key_cannot_be_stored_twice()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var first = await store.AddAsync(A.Reading(chain));
        await Assert.ThrowsAsync<DbUpdateException>(() =>
            store.AddAsync(new ReadingRow { ChainId = chain.Id, Key = first.Key, Fingerprint = "", Pitches = 1, LengthMm = 25 }));
    }
}
