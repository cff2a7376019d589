using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Tests;
using WearWatch.Worker.Tests;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests;

/// <summary>What one process may rely on in SQLite holds for any number of processes in PostgreSQL.</summary>
public sealed class OneWriterTests
{
    private const int Processes = 4;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_second_transaction_waits_for_the_first_and_then_sees_what_it_wrote()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await using var first = store.CreateDbContext();
        await using var second = store.CreateDbContext();
        Assert.IsType<PostgresWearDb>(first);
        var writing = await first.Database.BeginTransactionAsync(Ct);
        first.Chains.Add(new ChainRow { Name = "C1", PitchMm = 25.4 });
        await first.SaveChangesAsync(Ct);
        var waiting = second.Database.BeginTransactionAsync(Ct);
        Assert.NotSame(waiting, await Task.WhenAny(waiting, Task.Delay(500, Ct)));
        await writing.CommitAsync(Ct);
        await using var now = await waiting;
        Assert.Equal("C1", (await second.Chains.SingleAsync(Ct)).Name);
    }

    [Fact]
    public async Task A_reading_told_to_several_workers_at_once_is_stored_once_and_all_answer_the_same()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var workers = Workers(plant);
        for (var i = 1; i <= 10; i++)
        {
            var reading = A.Reading(counterH: 100 * i, percent: 0.1 * i, key: $"r{i}");
            var answers = await Task.WhenAll(
                workers.Select(w => w.Services.GetRequiredService<IntakeDesk>().TakeReadingAsync(reading, Ct)));
            Assert.Single(answers.Select(a => Assert.IsType<IntakeAnswer.Taken>(a).Id).Distinct());
            Assert.Single(answers, a => a is IntakeAnswer.Taken { AlreadyKnown: false });
        }

        await using var db = plant.Db();
        Assert.Equal(10, await db.Readings.CountAsync(Ct));
        Assert.Equal(1, await db.Forecasts.CountAsync(f => f.IsLatest, Ct));
        Assert.Equal(10, (await db.Forecasts.SingleAsync(f => f.IsLatest, Ct)).ReadingsUsed);
    }

    [Fact]
    public async Task Workers_that_take_readings_and_review_the_same_chains_keep_one_newest_forecast_and_one_notice_of_a_kind()
    {
        await using var plant = await TestPlant.OpenAsync();
        for (var c = 1; c <= 3; c++) await plant.AddChainAsync($"C{c}");
        var workers = Workers(plant);
        await Task.WhenAll(workers.Select((worker, w) => Task.Run(async () =>
        {
            for (var i = 1; i <= 8; i++)
            {
                var reading = A.Reading($"C{1 + i % 3}", 1000 * i, 0.4 * i, key: $"{w} {i}", confirmed: true);
                Assert.IsType<IntakeAnswer.Taken>(
                    await worker.Services.GetRequiredService<IntakeDesk>().TakeReadingAsync(reading, Ct));
                await worker.Services.GetRequiredService<ChainReview>().ReviewAsync(null, null, Ct);
            }
        }, Ct)));

        await using var db = plant.Db();
        Assert.Equal(8 * Processes, await db.Readings.CountAsync(Ct));
        foreach (var chain in await db.Chains.Select(c => c.Id).ToListAsync(Ct))
        {
            var newest = await db.Forecasts.SingleAsync(f => f.ChainId == chain && f.IsLatest, Ct);
            Assert.Equal(await db.Readings.Where(r => r.ChainId == chain).MaxAsync(r => (long?)r.Id, Ct), newest.LastReadingId);
        }

        Assert.All(
            await db.Notices.Where(n => n.EndedAt == null).GroupBy(n => new { n.ChainId, n.Kind }).Select(g => g.Count())
                .ToListAsync(Ct),
            open => Assert.Equal(1, open));
    }

    [Fact]
    public async Task Several_workers_that_start_together_on_an_empty_database_make_its_tables_once()
    {
        await using var under = await StoreUnderTest.MakeAsync();
        await using (var db = under.Store.CreateDbContext())
            await db.Database.ExecuteSqlRawAsync("DROP SCHEMA public CASCADE; CREATE SCHEMA public", Ct);
        await Task.WhenAll(Enumerable.Range(0, Processes)
            .Select(_ => Task.Run(() => WearStore.InPostgres(under.Database).PrepareAsync(Ct), Ct)));
        await using var after = under.Store.CreateDbContext();
        Assert.Empty(await after.Database.GetPendingMigrationsAsync(Ct));
        Assert.Equal(0, await after.Chains.CountAsync(Ct));
    }

    /// <summary>Workers that share nothing but the database.</summary>
    private static List<IHost> Workers(TestPlant plant) => [.. Enumerable.Range(0, Processes).Select(_ => plant.Beside())];
}
