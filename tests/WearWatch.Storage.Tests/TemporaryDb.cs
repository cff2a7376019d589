using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

/// <summary>A plant's memory that is thrown away after the test.</summary>
internal sealed class TemporaryDb : IDbContextFactory<WearDb>, IAsyncDisposable
{
    private readonly StoreUnderTest under;

    private TemporaryDb(StoreUnderTest under) => (this.under, Store) = (under, under.Store);

    public WearStore Store { get; }

    public static async Task<TemporaryDb> MakeAsync()
    {
        var db = new TemporaryDb(await StoreUnderTest.MakeAsync());
        await db.Store.PrepareAsync();
        return db;
    }

    public WearDb CreateDbContext() => Store.CreateDbContext();

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

    public ValueTask DisposeAsync() => under.DisposeAsync();
}
