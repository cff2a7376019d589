namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>Which columns of a table are hidden. It stands in the address, so that a shared link shows the same.</summary>
/// <param name="Table">The table's name in the address.</param>
/// <param name="Hidden">The names of the hidden columns there.</param>
public sealed record ColumnChoice(string Table, IReadOnlyList<string> Hidden)
{
    private const char Between = '.';

    /// <summary>Reads it from a query string.</summary>
    public static ColumnChoice Of(string query, string table) => new(
        table, TableAddress.Read(query, TableAddress.Hide + table).Split(Between, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Whether a column is hidden.</summary>
    public bool Hides(string column) => Hidden.Contains(column);

    /// <summary>With a column hidden, or shown again where it is hidden.</summary>
    public ColumnChoice Turn(string column) =>
        this with { Hidden = Hides(column) ? [.. Hidden.Where(c => c != column)] : [.. Hidden, column] };

    /// <summary>A query string with this in place of what it says of the table.</summary>
    public string In(string query) => TableAddress.With(query, TableAddress.Hide + Table, string.Join(Between, Hidden));
}
