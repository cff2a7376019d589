using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>The columns of a table, each with how it is had from a row: they cannot come apart.</summary>
/// <typeparam name="T">What a row is made from.</typeparam>
internal sealed class HistoryShape<T>
{
    private readonly List<HistoryColumn> columns = [];
    private readonly List<Func<T, IEnumerable<object?>>> cells = [];

    public HistoryShape<T> Text(string name, Phrase meaning, Func<T, string?> value) =>
        With(name, ColumnKind.Text, meaning, row => value(row));

    public HistoryShape<T> Whole(string name, Phrase meaning, Func<T, long?> value) =>
        With(name, ColumnKind.Whole, meaning, row => value(row));

    public HistoryShape<T> Number(string name, Phrase meaning, Func<T, double?> value) =>
        With(name, ColumnKind.Number, meaning, row => value(row));

    public HistoryShape<T> Moment(string name, Phrase meaning, Func<T, DateTimeOffset?> value) =>
        With(name, ColumnKind.Moment, meaning, row => value(row));

    public HistoryShape<T> YesNo(string name, Phrase meaning, Func<T, bool?> value) =>
        With(name, ColumnKind.YesNo, meaning, row => value(row));

    /// <summary>Columns of a file, with what stands in them.</summary>
    /// <param name="all">The columns.</param>
    /// <param name="thing">What the file tells of a row.</param>
    public HistoryShape<T> Columns<TThing>(IReadOnlyList<FileColumn<TThing>> all, Func<T, TThing> thing)
    {
        columns.AddRange(all.Select(c => new HistoryColumn(c.Name, c.Kind, $"{c.Meaning}")));
        cells.Add(row => thing(row) is var told ? all.Select(c => c.Value(told)) : []);
        return this;
    }

    /// <summary>A table of this shape.</summary>
    /// <param name="name">Its name in addresses and files.</param>
    /// <param name="meaning">What a row is.</param>
    /// <param name="page">So many rows after a row number, by rising number.</param>
    public HistoryTable Table(string name, Phrase meaning, Func<long, int, CancellationToken, Task<IReadOnlyList<T>>> page) =>
        new(
        name, meaning, [.. columns],
        async (after, take, ct) => [.. (await page(after, take, ct)).Select(row => cells.SelectMany(c => c(row)).ToArray())]);

    /// <summary>A table of this shape that is asked of the database.</summary>
    /// <param name="name">Its name in addresses and files.</param>
    /// <param name="meaning">What a row is.</param>
    /// <param name="databases">The plant's memory.</param>
    /// <param name="rows">The rows after a row number, by rising number.</param>
    public HistoryTable Table(
        string name, Phrase meaning, IDbContextFactory<WearDb> databases, Func<WearDb, long, IQueryable<T>> rows) =>
        Table(name, meaning, async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            return await rows(db, after).Take(take).ToListAsync(ct);
        });

    private HistoryShape<T> With(string name, ColumnKind kind, Phrase meaning, Func<T, object?> value)
    {
        columns.Add(new HistoryColumn(name, kind, meaning));
        cells.Add(row => [value(row)]);
        return this;
    }
}
