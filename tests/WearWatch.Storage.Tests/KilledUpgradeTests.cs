using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Tests;

/// <summary>SQLite's own: on PostgreSQL the turn to upgrade ends with its connection.</summary>
public sealed class KilledUpgradeTests
{
    /// <summary>What EF leaves in the memory while it upgrades: its turn.</summary>
    private const string TurnOfADeadProcess = """
        CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL);
        INSERT INTO __EFMigrationsLock VALUES (1, '2026-01-01 00:00:00+00:00');
        """;

    [Fact(Timeout = 60_000)]
    public async Task The_turn_of_a_process_that_was_killed_while_it_upgraded_keeps_nobody_waiting()
    {
        var ct = TestContext.Current.CancellationToken;
        await using var under = await StoreUnderTest.MakeEmptyAsync();
        await using (var old = under.Store.CreateDbContext())
            await old.Database.ExecuteSqlRawAsync(TurnOfADeadProcess, ct);
        await under.Store.PrepareAsync(ct);
        await using var db = under.Store.CreateDbContext();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(ct));
    }

    [Fact(Timeout = 60_000)]
    public async Task Who_starts_while_another_upgrades_waits_for_it()
    {
        var ct = TestContext.Current.CancellationToken;
        await using var under = await StoreUnderTest.MakeEmptyAsync();
        await using var db = under.Store.CreateDbContext();
        var path = db.Database.GetDbConnection().DataSource + "-upgrade";
        Task waiting;
        await using (new FileStream(path, FileMode.Create, FileAccess.ReadWrite, FileShare.None))
        {
            waiting = under.Store.PrepareAsync(ct);
            Assert.NotSame(waiting, await Task.WhenAny(waiting, Task.Delay(300, ct)));
        }

        await waiting;
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(ct));
    }
}
