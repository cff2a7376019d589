using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Units;
using Column = WearWatch.Plant.Files.FileColumn<WearWatch.Gauging.Reading>;

namespace WearWatch.Plant.Files;

/// <summary>The columns of readings.csv after the chain's name: the one list of what a reading tells.</summary>
public static class ReadingColumns
{
    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Column> All { get; } =
    [
        Column.Moment("taken_at", r => r.TakenAt, (r, v) => r with { TakenAt = v }) with { Meaning = "when" },
        Column.Number("counter_h", 0, RowFields.MostCounterH, r => r.Counter?.Hours,
                (r, v) => r with { Counter = RowFields.Hours(v) })
            with { Meaning = "hour counter" },
        Column.Word("tool", FileWords.Tools, r => r.Tool, (r, v) => v is { } tool ? r with { Tool = tool } : r)
            with { Meaning = "tape, caliper or sensor", Needed = $"write tape, caliper or sensor." },
        Column.Text("place", r => r.Place, (r, v) => r with { Place = v }) with { Meaning = "marked section of the chain" },
        Column.Whole("pitches", 1, 100_000, r => r.Pitches, (r, v) => v is { } pitches ? r with { Pitches = pitches } : r)
            with { Meaning = "pitches measured over", Needed = $"write how many pitches the length goes over." },
        new("length", ColumnKind.Text, r => AsWritten(r).Length, ReadLength)
            { Meaning = "length over them as it was written", Needed = $"write the measured length." },
        new("unit", ColumnKind.Text, r => FileWords.Units.Single(u => u.Value == AsWritten(r).Unit).Key, ReadUnit)
            { Meaning = "unit in which it was written", Needed = $"write mm or in." },
        Column.Number("temperature_c", -60, 400, r => r.TemperatureC, (r, v) => r with { TemperatureC = v })
            with { Meaning = "of the chain, in degrees Celsius" },
        Column.Whole("strand", 1, ChainCard.MostStrands, r => r.Strand, (r, v) => r with { Strand = v })
            with { Meaning = "strand of a chain with several, from 1" },
        Column.Flag("taut", r => r.Held.InPlaceTaut, (r, v) => v ? r with { Held = Held.Taut } : r)
            with { Meaning = "whether it was measured in place, taut", Always = true },
        new("load_n", ColumnKind.Number, r => r.Held.LoadNewtons, ReadLoad) { Meaning = "measuring load" },
        Column.Number("take_up_mm", 0, EventFacts.MostTakeUpMm, r => r.TakeUpMm, (r, v) => r with { TakeUpMm = v }, always: false)
            with { Meaning = "where the take-up stood, from where a new chain is taut" },
    ];

    /// <summary>All but the length and its unit, which are told otherwise elsewhere than in a file.</summary>
    public static IReadOnlyList<Column> BesideLength { get; } = [.. All.Where(c => c.Name is not ("length" or "unit"))];

    /// <summary>The length as it was written, with a point for a comma, where a file may hold it so; else in mm.</summary>
    private static (string Length, LengthUnit Unit) AsWritten(Reading reading)
    {
        var text = reading.Written.Replace(',', '.');
        return MeasuredLengthText.Read(text, reading.Unit) is LengthText.Understood told && told.WrittenIn == reading.Unit
            && told.Length.Millimetres.Equals(reading.LengthMm)
            ? (text, reading.Unit)
            : (RowFields.Text(reading.LengthMm), LengthUnit.Millimetre);
    }

    private static Reading ReadLength(RowFields fields, Reading reading)
    {
        var text = fields.Figure("length");
        if (text.Length == 0 || fields.Word("unit", FileWords.Units) is not { } unit) return reading;
        if (MeasuredLengthText.Read(text, unit) is LengthText.Understood length && length.WrittenIn == unit)
            return reading with { LengthMm = length.Length.Millimetres, Written = text };
        else
            fields.Fault("length", MeasuredLengthText.Read(text, unit) is LengthText.NotUnderstood not
                ? not.Reason
                : $"'{text}' is not in {fields.Text("unit")}, as the unit column says.");
        return reading;
    }

    /// <summary>The unit; what is wrong with it is said at the length.</summary>
    private static Reading ReadUnit(RowFields fields, Reading reading) =>
        FileWords.Units.TryGetValue(fields.Text("unit").ToLowerInvariant(), out var unit)
            ? reading with { Unit = unit }
            : reading;

    private static Reading ReadLoad(RowFields fields, Reading reading)
    {
        if (fields.Number("load_n", 0.001, Held.MostNewtons) is not { } newtons) return reading;
        if (reading.Held.InPlaceTaut)
            fields.Fault("load_n", $"Either taut in its place or under a measuring load: leave one empty.");
        return reading with { Held = Held.Under(newtons) };
    }
}
