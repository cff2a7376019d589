using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Tests;

public sealed class MigrationTests
{
    [Fact]
    public async Task The_migrations_make_what_the_model_says()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await using var db = store.CreateDbContext();
        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_database_can_be_prepared_again_and_keeps_what_it_has()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await store.AddChainAsync("C1");
        await store.Store.PrepareAsync(TestContext.Current.CancellationToken);
        await using var db = store.CreateDbContext();
        Assert.Equal("C1", (await db.Chains.SingleAsync(TestContext.Current.CancellationToken)).Name);
    }

    [Fact]
    public async Task A_reading_of_no_chain_cannot_be_stored()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await Assert.ThrowsAsync<DbUpdateException>(() =>
            store.AddAsync(A.Reading(new Rows.ChainRow { Id = 99, Name = "nobody" })));
    }
}
