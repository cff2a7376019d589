namespace WearWatch.Dashboard.Engineer.History;

/// <summary>
/// A table of the plant's history, as those get it who compute elsewhere. It is read page by page, by rising row number.
/// </summary>
/// <param name="Name">Its name in addresses and files.</param>
/// <param name="Meaning">What a row is.</param>
/// <param name="Columns">Its columns; the first is the row's number.</param>
/// <param name="Page">So many rows after a row number, each as its columns' values.</param>
public sealed record HistoryTable(
    string Name, Phrase Meaning, IReadOnlyList<HistoryColumn> Columns,
    Func<long, int, CancellationToken, Task<IReadOnlyList<object?[]>>> Page)
{
    private const int RowsAtOnce = 5000;

    /// <summary>All rows, a page after another: never the whole table in memory.</summary>
    public async IAsyncEnumerable<IReadOnlyList<object?[]>> PagesAsync(
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken ct)
    {
        var after = 0L;
        while (await Page(after, RowsAtOnce, ct) is { Count: > 0 } rows)
        {
            yield return rows;
            after = NumberOf(rows[^1]);
        }
    }

    /// <summary>The number of a row.</summary>
    public static long NumberOf(object?[] row) => (long)row[0]!;
}
