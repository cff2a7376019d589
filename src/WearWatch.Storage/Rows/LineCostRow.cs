namespace WearWatch.Storage.Rows;

/// <summary>What an hour of a line that stands still costs, where it is not the plant's usual figure.</summary>
public sealed class LineCostRow
{
    public int Id { get; init; }

    public required string Line { get; init; }

    public double StoppedPerHour { get; set; }
}
