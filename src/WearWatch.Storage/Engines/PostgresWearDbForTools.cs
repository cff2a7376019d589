using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace WearWatch.Storage.Engines;

/// <summary>
/// Gives <c>dotnet ef</c> a context to write PostgreSQL's migrations from; no server is asked, and the application never uses it.
/// </summary>
public sealed class PostgresWearDbForTools : IDesignTimeDbContextFactory<PostgresWearDb>
{
    public PostgresWearDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresWearDb>().UseNpgsql().Options);
}
