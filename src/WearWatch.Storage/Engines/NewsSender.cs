using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Engines;

/// <summary>
/// Tells the other processes on a PostgreSQL database which chains have something new, as part of the transaction that makes it
/// so.
/// </summary>
/// <remarks>
/// PostgreSQL delivers at the commit or not at all: a process that is killed right after its commit has told, too.
/// </remarks>
internal sealed class NewsSender(Guid sender) : SaveChangesInterceptor
{
    /// <summary>A notification holds less than 8,000 bytes.</summary>
    private const int ChainsAtOnce = 500;

    private readonly System.Runtime.CompilerServices.ConditionalWeakTable<DbContext, HashSet<int>> concerned = [];

    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Remember(eventData.Context!);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Remember(eventData.Context!);
        return ValueTask.FromResult(result);
    }

    public override int SavedChanges(SaveChangesCompletedEventData eventData, int result)
    {
        foreach (var text in Texts(eventData.Context!)) eventData.Context!.Database.ExecuteSql(Notify(text));
        return result;
    }

    public override async ValueTask<int> SavedChangesAsync(
        SaveChangesCompletedEventData eventData, int result, CancellationToken cancellationToken = default)
    {
        foreach (var text in Texts(eventData.Context!))
            await eventData.Context!.Database.ExecuteSqlAsync(Notify(text), cancellationToken);
        return result;
    }

    private static FormattableString Notify(string text) => $"SELECT pg_notify({NewsListener.Channel}, {text})";

    private void Remember(DbContext db) => concerned.AddOrUpdate(db, [.. db.ChangeTracker.Entries()
        .Where(e => e.State is EntityState.Added or EntityState.Modified).Select(e => ChainOf(e.Entity)).OfType<int>()]);

    private IEnumerable<string> Texts(DbContext db)
    {
        if (!concerned.TryGetValue(db, out var chains)) return [];
        concerned.Remove(db);
        return chains.Chunk(ChainsAtOnce)
            .Select(some => string.Create(CultureInfo.InvariantCulture, $"{sender:N} {string.Join(',', some)}"));
    }

    private static int? ChainOf(object row) => row switch
    {
        ForecastRow forecast => forecast.ChainId,
        NoticeRow notice => notice.ChainId,
        ReadingRow reading => reading.ChainId,
        EventRow happening => happening.ChainId,
        CardChangeRow change => change.ChainId,
        _ => null,
    };
}
