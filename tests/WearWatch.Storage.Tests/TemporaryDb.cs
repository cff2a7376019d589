using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

/// <summary>A plant's memory in a file that is thrown away after the test.</summary>
public sealed class TemporaryDb : IDbContextFactory<WearDb>, IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-db");

    private TemporaryDb()
    {
    }

    public string Path => System.IO.Path.Combine(folder.FullName, "wearwatch.db");

    public static async Task<TemporaryDb> MakeAsync()
    {
        var db = new TemporaryDb();
        await db.PrepareAsync();
        return db;
    }

    public WearDb CreateDbContext() => new((DbContextOptions<WearDb>)new DbContextOptionsBuilder<WearDb>().UseWearSqlite(Path).Options);

    public async Task<ChainRow> AddChainAsync(string name = "C1")
    {
        await using var db = CreateDbContext();
        var chain = new ChainRow { Name = name, PitchMm = 25.4 };
        db.Chains.Add(chain);
        await db.SaveChangesAsync();
        return chain;
    }

    public async Task<ReadingRow> AddAsync(ReadingRow row)
    {
        await using var db = CreateDbContext();
        db.Readings.Add(row);
        await db.SaveChangesAsync();
        return row;
    }

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }
}
