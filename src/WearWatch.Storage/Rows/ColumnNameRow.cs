namespace WearWatch.Storage.Rows;

/// <summary>Which of our columns a column of another program's files is, as a person has said it.</summary>
public sealed class ColumnNameRow
{
    public int Id { get; init; }

    /// <summary>What is in such files: Chains, Readings, Events, LinkMeasures, PartReadings or WorkOrders.</summary>
    public required string Kind { get; init; }

    /// <summary>The column's name there, in small letters.</summary>
    public required string Theirs { get; init; }

    /// <summary>Our name of it; empty where the column is left out.</summary>
    public required string Ours { get; set; }
}
