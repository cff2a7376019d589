using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>A row of part_readings.csv: what was measured of one part, as it was written.</summary>
public static class PartReadingText
{
    /// <summary>The columns. A size when new and a limit are told once and stay until another is told.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["chain", "taken_at", "counter_h", "part", "place", "value", "new", "limit", "limit_source", "unit"];

    /// <summary>The row as it was written, with its line; null when it is at fault.</summary>
    public static FileItem.PartMeasured? Read(RowFields fields, int line)
    {
        var row = new FileItem.PartMeasured(line, new PartAsWritten
        {
            Chain = fields.Needed("chain", $"write the chain's name."),
            TakenAt = fields.Moment("taken_at"),
            CounterH = fields.Number("counter_h", 0, RowFields.MostCounterH),
            Part = fields.Text("part"),
            Place = fields.Text("place"),
            Value = fields.Text("value"),
            New = fields.Text("new"),
            Limit = fields.Text("limit"),
            LimitSource = fields.Text("limit_source"),
            Unit = fields.Word("unit", FileWords.Units) ?? LengthUnit.Millimetre,
        });
        if (fields.Text("unit").Length == 0) fields.Fault("unit", $"Empty: write mm or in.");
        return fields.Faults.Count > 0 ? null : row;
    }
}
