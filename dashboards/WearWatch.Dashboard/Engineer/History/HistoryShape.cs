using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>The columns of a table, each with how it is had from a row: they cannot come apart.</summary>
/// <typeparam name="T">What a row is made from.</typeparam>
internal sealed class HistoryShape<T>
{
    private readonly List<(HistoryColumn Column, Func<T, object?> Value)> cells = [];

    public HistoryShape<T> Text(string name, string meaning, Func<T, string?> value) => With(name, HistoryKind.Text, meaning, row => value(row));

    public HistoryShape<T> Whole(string name, string meaning, Func<T, long?> value) => With(name, HistoryKind.Whole, meaning, row => value(row));

    public HistoryShape<T> Number(string name, string meaning, Func<T, double?> value) => With(name, HistoryKind.Number, meaning, row => value(row));

    public HistoryShape<T> Moment(string name, string meaning, Func<T, DateTimeOffset?> value) => With(name, HistoryKind.Moment, meaning, row => value(row));

    public HistoryShape<T> YesNo(string name, string meaning, Func<T, bool?> value) => With(name, HistoryKind.YesNo, meaning, row => value(row));

    /// <summary>A table of this shape.</summary>
    /// <param name="name">Its name in addresses and files.</param>
    /// <param name="meaning">What a row is.</param>
    /// <param name="page">So many rows after a row number, by rising number.</param>
    public HistoryTable Table(string name, string meaning, Func<long, int, CancellationToken, Task<IReadOnlyList<T>>> page) => new(
        name, meaning, [.. cells.Select(c => c.Column)],
        async (after, take, ct) => [.. (await page(after, take, ct)).Select(row => cells.Select(c => c.Value(row)).ToArray())]);

    /// <summary>A table of this shape that is asked of the database.</summary>
    /// <param name="name">Its name in addresses and files.</param>
    /// <param name="meaning">What a row is.</param>
    /// <param name="databases">The plant's memory.</param>
    /// <param name="rows">The rows after a row number, by rising number.</param>
    public HistoryTable Table(string name, string meaning, IDbContextFactory<WearDb> databases, Func<WearDb, long, IQueryable<T>> rows) =>
        Table(name, meaning, async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            return await rows(db, after).Take(take).ToListAsync(ct);
        });

    private HistoryShape<T> With(string name, HistoryKind kind, string meaning, Func<T, object?> value)
    {
        cells.Add((new HistoryColumn(name, kind, meaning), value));
        return this;
    }
}
