namespace WearWatch.Dashboard.Kit.Tables;

/// <summary>
/// What a table's rows are narrowed to: those whose words hold all that is typed. It stands in the address, so that a shared link
/// shows the same.
/// </summary>
/// <param name="Table">The table's name in the address.</param>
/// <param name="Text">What was typed; empty for all rows.</param>
public sealed record TableFind(string Table, string Text = "")
{
    /// <summary>Up to so many rows are seen at a glance: nothing needs to be searched for.</summary>
    public const int Glance = 7;

    /// <summary>Its name in the address.</summary>
    public string Name => TableAddress.Find + Table;

    /// <summary>Reads it from a query string.</summary>
    public static TableFind Of(string query, string table) =>
        new(table, TableAddress.Read(query, TableAddress.Find + table).Trim());

    /// <summary>Whether these rows are searched: they have words and are more than a glance takes.</summary>
    public bool Serves<T>(IReadOnlyList<T> rows, IReadOnlyList<ListColumn<T>> columns) => Text.Length > 0
        || (rows.Count > Glance && columns.Any(c => rows.Any(r => c.WordsOf(r).Length > 0)));

    /// <summary>The rows of which some column holds each typed word, in whatever case.</summary>
    public IReadOnlyList<T> In<T>(IReadOnlyList<T> rows, IReadOnlyList<ListColumn<T>> columns)
    {
        var words = Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? rows : [.. rows.Where(r => words.All(w => columns.Any(c => Holds(c.WordsOf(r), w))))];
    }

    /// <summary>A query string with this in place of what it says of the table.</summary>
    public string In(string query) => TableAddress.With(query, Name, Text);

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
