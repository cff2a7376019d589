using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Engineer.History;

/// <summary>A column of a table of the history.</summary>
/// <param name="Name">Its name, with its unit; the same in CSV, in Parquet and in the API.</param>
/// <param name="Kind">What stands in it; anything but an id may be empty.</param>
/// <param name="Meaning">What it means.</param>
public sealed record HistoryColumn(string Name, ColumnKind Kind, Phrase Meaning);
