namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>By which column a table is sorted. It stands in the address, so that a shared link shows the same.</summary>
/// <param name="Table">The table's name in the address.</param>
/// <param name="Column">The column's name there; empty for the order that the page gives.</param>
/// <param name="Descending">Whether the largest stands first.</param>
public sealed record TableSort(string Table, string Column = "", bool Descending = false)
{
    /// <summary>Reads it from a query string.</summary>
    public static TableSort Of(string query, string table)
    {
        var text = TableAddress.Read(query, TableAddress.Sort + table);
        return text.StartsWith('-') ? new(table, text[1..], Descending: true) : new(table, text);
    }

    /// <summary>Sorted by a column, the other way round when it is sorted by that already.</summary>
    public TableSort By(string column) => this with { Column = column, Descending = column == Column && !Descending };

    /// <summary>A query string with this in place of what it says of the table.</summary>
    public string In(string query) => TableAddress.With(query, TableAddress.Sort + Table, (Descending ? "-" : "") + Column);

    /// <summary>Rows in order; what has no figure stands last either way.</summary>
    /// <param name="rows">The rows in the page's own order.</param>
    /// <param name="by">What they are sorted by; null leaves them as they are.</param>
    public IReadOnlyList<T> Order<T>(IReadOnlyList<T> rows, Func<T, IComparable?>? by)
    {
        if (by is null) return rows;
        var known = rows.Where(r => IsKnown(by(r)));
        return [.. Descending ? known.OrderByDescending(by) : known.OrderBy(by), .. rows.Where(r => !IsKnown(by(r)))];
    }

    private static bool IsKnown(IComparable? value) => value is not (null or double.NaN or "");
}
