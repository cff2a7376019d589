using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace WearWatch.Storage.Safekeeping;

/// <summary>Copies a memory row by row from one engine to the other, with the same ids.</summary>
/// <remarks>So a plant in PostgreSQL has the same backups as one in SQLite, and either comes back into either.</remarks>
internal static class MemoryCopy
{
    private const int RowsAtOnce = 2_000;

    private static readonly MethodInfo copyTable =
        typeof(MemoryCopy).GetMethod(nameof(CopyTableAsync), BindingFlags.NonPublic | BindingFlags.Static)!;

    /// <summary>Copies everything.</summary>
    /// <param name="from">A memory; of PostgreSQL one moment is read, and its writers are not kept waiting.</param>
    /// <param name="to">An empty memory of the present layout.</param>
    /// <param name="ct">Stops it; what was copied by then stays.</param>
    public static async Task CopyAsync(WearDb from, WearDb to, CancellationToken ct)
    {
        await from.Database.OpenConnectionAsync(ct);
        var isPostgres = from.Database.IsNpgsql();
        // Not EF's own transaction: on PostgreSQL that takes the one writer's turn.
        if (isPostgres)
            await from.Database.ExecuteSqlRawAsync("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", ct);
        foreach (var table in InOrder(to.Model))
            await (Task)copyTable.MakeGenericMethod(table.ClrType).Invoke(null, [from, to, table, ct])!;
        if (isPostgres) await from.Database.ExecuteSqlRawAsync("COMMIT", ct);
    }

    /// <summary>The tables, each after those that it refers to.</summary>
    public static IReadOnlyList<IEntityType> InOrder(IModel model)
    {
        var left = model.GetEntityTypes().Where(t => !t.IsOwned()).OrderBy(t => t.Name, StringComparer.Ordinal).ToList();
        var ordered = new List<IEntityType>();
        while (left.Count > 0)
        {
            var next = left.First(t => t.GetForeignKeys().Select(k => k.PrincipalEntityType)
                .All(other => other == t || ordered.Contains(other)));
            ordered.Add(next);
            left.Remove(next);
        }

        return ordered;
    }

    private static async Task CopyTableAsync<T>(WearDb from, WearDb to, IEntityType table, CancellationToken ct)
        where T : class
    {
        to.ChangeTracker.AutoDetectChangesEnabled = false;
        var key = table.FindPrimaryKey()!.Properties[0].Name;
        var chunk = new List<T>(RowsAtOnce);
        await foreach (var row in from.Set<T>().AsNoTracking().OrderBy(r => EF.Property<object>(r, key)).AsAsyncEnumerable()
            .WithCancellation(ct))
        {
            chunk.Add(row);
            if (chunk.Count == RowsAtOnce) await SaveAsync(to, chunk, ct);
        }

        await SaveAsync(to, chunk, ct);
        if (to.Database.IsNpgsql()) await GoOnAfterAsync(to, table, ct);
    }

    private static async Task SaveAsync<T>(WearDb to, List<T> rows, CancellationToken ct)
        where T : class
    {
        to.AddRange(rows);
        await to.SaveChangesAsync(ct);
        to.ChangeTracker.Clear();
        rows.Clear();
    }

    /// <summary>New rows get ids after those that came; SQLite does that by itself.</summary>
    private static async Task GoOnAfterAsync(WearDb to, IEntityType table, CancellationToken ct)
    {
        if (table.FindPrimaryKey()!.Properties is not [{ ValueGenerated: ValueGenerated.OnAdd } key]) return;
        var (name, column) = (table.GetTableName(), key.GetColumnName());
#pragma warning disable EF1002, EF1003 // the names come from the model
        await to.Database.ExecuteSqlRawAsync(
            $"SELECT setval(pg_get_serial_sequence('\"{name}\"', '{column}'), (SELECT MAX(\"{column}\") FROM \"{name}\")) "
            + $"WHERE EXISTS (SELECT 1 FROM \"{name}\")", ct);
#pragma warning restore EF1002, EF1003
    }
}
