using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Safekeeping;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>Upgrades of a memory that version 0.1 wrote are killed in their midst.</summary>
[Collection(nameof(OneAtATime))]
public sealed class KilledMigrationTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_memory_whose_upgrade_was_killed_comes_up_to_date_with_all_that_it_had(bool onPostgres)
    {
        var text = await File.ReadAllTextAsync(A.Data("layouts", "0.1", onPostgres ? "postgres.sql" : "sqlite.sql"), Ct);
        await using var program = await KilledProgram.OnAsync(onPostgres);
        await new KillMoments(program).KillAsync(
            async () =>
            {
                await MakeOldAsync();
                await program.RunAsync("backup", program.At("first"));
            },
            async round =>
            {
                await MakeOldAsync();
                return ["backup", program.At($"{round}")];
            },
            async (round, _) =>
            {
                await program.RunAsync("verify");
                await program.RunAsync("backup", program.At($"{round}-again"));
                await using var db = program.Db();
                Assert.Empty(await db.Database.GetPendingMigrationsAsync(Ct));
                Assert.Equal("LC-01", (await db.Chains.SingleAsync(Ct)).Name);
                var reading = await db.Readings.SingleAsync(Ct);
                Assert.Equal((1200.0, 613.5, "Ina"), (reading.CounterH!.Value, reading.LengthMm, reading.ToldBy));
                foreach (var kept in Directory.GetFiles(program.Data, "before-upgrade-*.db"))
                    Assert.Empty((await Check.FileAsync(kept, Ct)).Faults);
            });

        async Task MakeOldAsync()
        {
            SqliteConnection.ClearAllPools();
            if (Directory.Exists(program.Data)) Directory.Delete(program.Data, recursive: true);
            Directory.CreateDirectory(program.Data);
            await using var old = program.Db();
            await old.Database.OpenConnectionAsync(Ct);
            await using var command = old.Database.GetDbConnection().CreateCommand();
            command.CommandText = onPostgres ? "DROP SCHEMA public CASCADE; CREATE SCHEMA public;" + text : text;
            await command.ExecuteNonQueryAsync(Ct);
        }
    }
}
