namespace WearWatch.Dashboard.Engineer.History;

/// <summary>What stands in a column.</summary>
public enum HistoryKind
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number of up to 64 bits.</summary>
    Whole,

    /// <summary>A number in double precision.</summary>
    Number,

    /// <summary>A moment, in UTC.</summary>
    Moment,

    /// <summary>Yes or no.</summary>
    YesNo,
}

/// <summary>A column of a table of the history.</summary>
/// <param name="Name">Its name, with its unit; the same in CSV, in Parquet and in the API.</param>
/// <param name="Kind">What stands in it; anything but an id may be empty.</param>
/// <param name="Meaning">What it means.</param>
public sealed record HistoryColumn(string Name, HistoryKind Kind, string Meaning);
