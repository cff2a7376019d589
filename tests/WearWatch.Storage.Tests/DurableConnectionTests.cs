using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Tests;

public sealed class DurableConnectionTests
{
    [Theory]
    [InlineData("journal_mode", "wal")]
    // FULL: the log is synced at each commit, https://www.sqlite.org/pragma.html#pragma_synchronous
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "30000")]
    public async Task Every_connection_is_durable_and_checks_what_belongs_together(string pragma, string expected)
    {
        await using var store = await TemporaryDb.MakeAsync();
        for (var i = 0; i < 2; i++)
        {
            await using var db = store.CreateDbContext();
            await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"PRAGMA {pragma}";
            Assert.Equal(expected, (await command.ExecuteScalarAsync(TestContext.Current.CancellationToken))!.ToString());
        }
    }
}
