using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Tests;

public sealed class MigrationTests
{
    [Fact]
    public async Task The_migrations_make_what_the_model_says()
    {
        using var store = await TemporaryDb.MakeAsync();
        await using var db = store.CreateDbContext();
        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_database_can_be_prepared_again_and_keeps_what_it_has()
    {
        using var store = await TemporaryDb.MakeAsync();
        await store.AddChainAsync("C1");
        await store.PrepareAsync(TestContext.Current.CancellationToken);
        await using var db = store.CreateDbContext();
        Assert.Equal("C1", (await db.Chains.SingleAsync(TestContext.Current.CancellationToken)).Name);
    }

    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")] // FULL: the log is synced at each commit, https://www.sqlite.org/pragma.html#pragma_synchronous
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "30000")]
    public async Task Every_connection_is_durable_and_checks_what_belongs_together(string pragma, string expected)
    {
        using var store = await TemporaryDb.MakeAsync();
        for (var i = 0; i < 2; i++)
        {
            await using var db = store.CreateDbContext();
            await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"PRAGMA {pragma}";
            Assert.Equal(expected, (await command.ExecuteScalarAsync(TestContext.Current.CancellationToken))!.ToString());
        }
    }

    [Fact]
    public async Task A_reading_of_no_chain_cannot_be_stored()
    {
        using var store = await TemporaryDb.MakeAsync();
        await Assert.ThrowsAsync<DbUpdateException>(() => store.AddAsync(A.Reading(new Rows.ChainRow { Id = 99, Name = "nobody" })));
    }
}
