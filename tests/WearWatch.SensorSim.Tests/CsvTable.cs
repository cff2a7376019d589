using System.Globalization;

namespace WearWatch.SensorSim.Tests;

/// <summary>A file read back in the plainest way: the mill's own texts need no quotes, and a test says so.</summary>
internal sealed record CsvTable(string Header, IReadOnlyList<CsvLine> Lines)
{
    public static CsvTable Read(string path)
    {
        var lines = File.ReadAllText(path).Split("\r\n");
        Assert.Equal("", lines[^1]);
        Assert.DoesNotContain(lines, line => line.AsSpan().IndexOfAny('\n', '\r', '"') >= 0);
        var names = lines[0].Split(',');
        return new CsvTable(lines[0], [.. lines[1..^1].Select(line => CsvLine.Of(names, line.Split(',')))]);
    }
}

internal sealed class CsvLine(Dictionary<string, string> cells)
{
    public string this[string name] => cells[name];

    public static CsvLine Of(string[] names, string[] values)
    {
        Assert.Equal(names.Length, values.Length);
        return new CsvLine(names.Zip(values).ToDictionary(pair => pair.First, pair => pair.Second));
    }

    public double Number(string name) => double.Parse(cells[name], NumberStyles.Float, CultureInfo.InvariantCulture);

    public double? NumberOrNull(string name) => cells[name] == "" ? null : Number(name);

    public DateTimeOffset Moment(string name) =>
        DateTimeOffset.ParseExact(cells[name], "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>A length in millimetres, from millimetres, decimal inches or inches and a fraction.</summary>
    public double LengthMm(string name)
    {
        var inches = cells[name].Split(' ').Sum(part => part.Split('/') is [var over, var under]
            ? double.Parse(over, CultureInfo.InvariantCulture) / double.Parse(under, CultureInfo.InvariantCulture)
            : double.Parse(part, CultureInfo.InvariantCulture));
        return cells["unit"] == "in" ? 25.4 * inches : inches;
    }
}
