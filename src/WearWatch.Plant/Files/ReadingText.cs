using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>A row of readings.csv.</summary>
public static class ReadingText
{
    /// <summary>The reading that a row describes; null when it is at fault.</summary>
    public static Reading? Read(RowFields fields)
    {
        var chain = fields.Needed("chain", "write the chain's name.");
        var takenAt = fields.Moment("taken_at");
        var counterH = fields.Number("counter_h", 0, 1e7);
        fields.Needed("tool", "write tape, caliper or sensor.");
        var tool = fields.Word("tool", FileWords.Tools);
        fields.Needed("pitches", "write how many pitches the length goes over.");
        var pitches = fields.Whole("pitches", 1, 100_000);
        var temperatureC = fields.Number("temperature_c", -60, 400);
        var lengthMm = ReadLength(fields);
        var place = fields.Label("place");
        var strand = fields.Whole("strand", 1, ChainCard.MostStrands);
        var held = ReadHeld(fields);
        if (takenAt is null && counterH is null && !fields.Faults.Any(f => f.Column is "taken_at" or "counter_h"))
            fields.Fault(fields.Has("counter_h") ? "counter_h" : "taken_at", "Empty: a reading needs its time or the hour counter.");
        if (fields.Faults.Count > 0) return null;

        return new Reading
        {
            Chain = chain,
            TakenAt = takenAt,
            Counter = counterH is { } h ? new RunningHours(h) : null,
            Tool = tool!.Value,
            Place = place,
            Strand = strand,
            Held = held,
            Pitches = pitches!.Value,
            LengthMm = lengthMm!.Value,
            TemperatureC = temperatureC,
        };
    }

    /// <summary>The length with its unit as it is written.</summary>
    public static string Length(RowFields fields) => $"{fields.Text("length")} {fields.Text("unit").ToLowerInvariant()}";

    /// <summary>The millimetres of a length as a file may hold it; null when it may not.</summary>
    public static double? LengthMm(string text, string unit)
    {
        var fields = new RowFields(new Dictionary<string, int> { ["length"] = 0, ["unit"] = 1 }, TimeZoneInfo.Utc);
        fields.Take([text, unit]);
        return ReadLength(fields);
    }

    private static Held ReadHeld(RowFields fields)
    {
        var taut = fields.Flag("taut");
        var loadN = fields.Number("load_n", 0.001, Held.MostNewtons);
        if (taut && loadN is not null) fields.Fault("load_n", "Either taut in its place or under a measuring load: leave one empty.");
        return Held.From(taut, loadN);
    }

    private static double? ReadLength(RowFields fields)
    {
        fields.Needed("unit", "write mm or in.");
        var unit = fields.Word("unit", FileWords.Units);
        var text = fields.Needed("length", "write the measured length.");
        if (text.Length == 0 || unit is null) return null;
        if (text.Contains(',', StringComparison.Ordinal))
            fields.Fault("length", $"'{text}': write a point, not a comma, as the decimal sign and no thousands sign.");
        else if (MeasuredLengthText.Read(text, unit.Value) is LengthText.NotUnderstood not)
            fields.Fault("length", not.Reason);
        else if (MeasuredLengthText.Read(text, unit.Value) is LengthText.Understood length)
        {
            if (length.WrittenIn == unit) return length.Length.Millimetres;
            fields.Fault("length", $"'{text}' is not in {fields.Text("unit")}, as the unit column says.");
        }

        return null;
    }
}
