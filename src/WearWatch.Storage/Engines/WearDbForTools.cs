using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace WearWatch.Storage.Engines;

/// <summary>Gives <c>dotnet ef</c> a context to write SQLite's migrations from; the application never uses it.</summary>
public sealed class WearDbForTools : IDesignTimeDbContextFactory<WearDb>
{
    public WearDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<WearDb>().UseSqlite("Data Source=:memory:").Options);
}
