using WearWatch.Gauging;

namespace WearWatch.Plant.Files;

/// <summary>A row of readings.csv.</summary>
public static class ReadingText
{
    /// <summary>A reading of a chain of which nothing is told yet, to be filled column by column.</summary>
    public static Reading Blank(string chain) => new() { Chain = chain, Tool = default, Pitches = 1, LengthMm = 0 };

    /// <summary>The reading that a row describes; null when it is at fault.</summary>
    public static Reading? Read(RowFields fields)
    {
        var chain = fields.Needed("chain", $"write the chain's name.");
        var reading = fields.Fill(ReadingColumns.All, Blank(chain));
        if (reading is { TakenAt: null, Counter: null } && !fields.Faults.Any(f => f.Column is "taken_at" or "counter_h"))
            fields.Fault(
                fields.Has("counter_h") ? "counter_h" : "taken_at", $"Empty: a reading needs its time or the hour counter.");
        return fields.Faults.Count > 0 ? null : reading;
    }
}
