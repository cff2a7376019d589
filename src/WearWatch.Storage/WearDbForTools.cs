using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace WearWatch.Storage;

/// <summary>Gives <c>dotnet ef</c> a context to write migrations from; the application never uses it.</summary>
public sealed class WearDbForTools : IDesignTimeDbContextFactory<WearDb>
{
    public WearDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<WearDb>().UseSqlite("Data Source=:memory:").Options);
}
