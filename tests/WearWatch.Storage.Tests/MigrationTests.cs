using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Tests;

public sealed class MigrationTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_migrations_make_what_the_model_says()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await using var db = store.CreateDbContext();
        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Ct));
    }

    [Fact]
    public async Task A_database_can_be_prepared_again_and_keeps_what_it_has()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await store.AddChainAsync("C1");
        await store.Store.PrepareAsync(Ct);
        await using var db = store.CreateDbContext();
        Assert.Equal("C1", (await db.Chains.SingleAsync(Ct)).Name);
    }

    /// <summary>The layouts that a released program has written; each stays here for good, once for each engine.</summary>
    public static TheoryData<string> Layouts =>
        [.. Directory.GetDirectories(Path.Combine(AppContext.BaseDirectory, "data", "layouts"))
            .Select(d => Path.GetFileName(d)!)];

    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task A_database_of_an_older_layout_comes_up_to_date_and_keeps_what_it_has(string layout)
    {
        await using var under = await StoreUnderTest.MakeEmptyAsync();
        var engine = under.Database.Length > 0 ? "postgres" : "sqlite";
        var text = await File.ReadAllTextAsync(
            Path.Combine(AppContext.BaseDirectory, "data", "layouts", layout, engine + ".sql"), Ct);
        await using (var old = under.Store.CreateDbContext())
        {
            await old.Database.OpenConnectionAsync(Ct);
            await using var command = old.Database.GetDbConnection().CreateCommand();
            command.CommandText = text;
            await command.ExecuteNonQueryAsync(Ct);
        }

        await under.Store.PrepareAsync(Ct);
        await using var db = under.Store.CreateDbContext();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Ct));
        if (engine == "sqlite")
            Assert.Single(Directory.GetFiles(Path.GetDirectoryName(db.Database.GetDbConnection().DataSource)!, "before-*"));
        var chain = await db.Chains.SingleAsync(Ct);
        Assert.Equal(("LC-01", "leaf", true), (chain.Name, chain.Family.Name, chain.Lifts));
        var reading = await db.Readings.SingleAsync(Ct);
        Assert.Equal((1200.0, 613.5, "Ina"), (reading.CounterH!.Value, reading.LengthMm, reading.ToldBy));
    }

    [Fact]
    public async Task A_reading_of_no_chain_cannot_be_stored()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await Assert.ThrowsAsync<DbUpdateException>(() =>
            store.AddAsync(A.Reading(new Rows.ChainRow { Id = 99, Name = "nobody" })));
    }
}
