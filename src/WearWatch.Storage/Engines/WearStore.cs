using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Npgsql;

namespace WearWatch.Storage.Engines;

/// <summary>Where the plant's memory is kept: in a SQLite file, or in PostgreSQL for more than one process.</summary>
public sealed class WearStore : IDbContextFactory<WearDb>
{
    /// <summary>How long a writer waits for another one before it gives up.</summary>
    public static readonly TimeSpan BusyTimeout = TimeSpan.FromSeconds(30);

    /// <summary>Any number that no other user of a PostgreSQL database takes.</summary>
    private const int LayoutLock = 5760113;

    private readonly Func<WearDb> open;

    private WearStore(Func<WearDb> open, string? postgres = null, Guid name = default) =>
        (this.open, Postgres, Name) = (open, postgres, name);

    /// <summary>Tells this process from others on the same database.</summary>
    internal Guid Name { get; }

    /// <summary>The connection string of PostgreSQL; null when a SQLite file is used.</summary>
    public string? Postgres { get; }

    /// <summary>Keeps the memory in this file, which <see cref="PrepareAsync"/> makes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="host">Where its log goes; nowhere if not given.</param>
    /// <param name="pooling">Whether the file stays open for the next who asks.</param>
    public static WearStore InSqlite(string path, IServiceProvider? host = null, bool pooling = true)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            ForeignKeys = true,
            Pooling = pooling,
            DefaultTimeout = (int)BusyTimeout.TotalSeconds,
        };
        var options = new DbContextOptionsBuilder<WearDb>().UseSqlite(connection.ConnectionString)
            .AddInterceptors(DurableConnection.Instance, AppendOnly.Instance).UseApplicationServiceProvider(host)
            .ConfigureWarnings(AsReleased).Options;
        return new WearStore(() => new WearDb((DbContextOptions<WearDb>)options));
    }

    /// <summary>Keeps the memory in a PostgreSQL database, for any number of processes.</summary>
    /// <param name="connectionString">As Npgsql takes it: <c>Host=...;Database=...;Username=...;Password=...</c>.</param>
    /// <param name="host">Where its log goes; nowhere if not given.</param>
    /// <exception cref="ArgumentException">It is no connection string of PostgreSQL.</exception>
    public static WearStore InPostgres(string connectionString, IServiceProvider? host = null)
    {
        // An acknowledged reading is on the disk, whatever the server's own setting says.
        var connection = new NpgsqlConnectionStringBuilder(connectionString) { ApplicationName = "WearWatch" };
        connection.Options = $"{connection.Options} -c synchronous_commit=on".Trim();
        var name = Guid.NewGuid();
        var options = new DbContextOptionsBuilder<PostgresWearDb>().UseNpgsql(connection.ConnectionString)
            .AddInterceptors(OneWriter.Instance, AppendOnly.Instance, new NewsSender(name))
            .UseApplicationServiceProvider(host).ConfigureWarnings(AsReleased).Options;
        return new WearStore(
            () => new PostgresWearDb((DbContextOptions<PostgresWearDb>)options), connection.ConnectionString, name);
    }

    public WearDb CreateDbContext() => open();

    /// <summary>
    /// Makes the tables where they are missing and brings them to the present layout. Processes that start together wait for each
    /// other.
    /// </summary>
    /// <exception cref="NewerLayoutException">A newer program wrote it; nothing was changed.</exception>
    public async Task PrepareAsync(CancellationToken ct = default)
    {
        await using var db = CreateDbContext();
        if (Postgres is null) ClosedFile.Make(db.Database.GetDbConnection().DataSource);
        await RefuseNewerAsync(db, ct);
        if (Postgres is not null)
        {
            await MigrateAloneAsync(db, ct);
            return;
        }

        if ((await db.Database.GetPendingMigrationsAsync(ct)).Any()) await SqliteUpgrade.RunAsync(db, ct);
        // Write-ahead logging lets screens read while a file is imported; it stays switched on in the file.
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", ct);
    }

    /// <summary>A program that does not know the layout would misread it, or write what the newer one misreads.</summary>
    private static async Task RefuseNewerAsync(WearDb db, CancellationToken ct)
    {
        var known = db.Database.GetMigrations().ToHashSet(StringComparer.Ordinal);
        if ((await db.Database.GetAppliedMigrationsAsync(ct)).FirstOrDefault(m => !known.Contains(m)) is { } newer)
            throw new NewerLayoutException(newer);
    }

    /// <summary>That the migrations make what the model says is tested; a start need not work it out again.</summary>
    private static void AsReleased(WarningsConfigurationBuilder warnings) =>
        warnings.Ignore(RelationalEventId.PendingModelChangesWarning);

    /// <summary>
    /// Migrates PostgreSQL while no other process does. EF's own lock ends after each migration; this one after all, or with the
    /// connection.
    /// </summary>
    private static async Task MigrateAloneAsync(WearDb db, CancellationToken ct)
    {
        await db.Database.OpenConnectionAsync(ct);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({LayoutLock})", ct);
        await db.Database.MigrateAsync(ct);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({LayoutLock})", ct);
    }
}
