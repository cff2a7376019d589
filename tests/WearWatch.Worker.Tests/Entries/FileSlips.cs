using System.Globalization;

namespace WearWatch.Worker.Tests.Entries;

/// <summary>A file of the mill as rows of fields, and slips in any field of it, whatever its column holds.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, each as wide as the columns.</param>
internal sealed record FileSlips(string[] Columns, IReadOnlyList<string[]> Rows)
{
    /// <summary>The rows of some chains.</summary>
    public static FileSlips Read(string path, Func<string[], bool> which)
    {
        var rows = File.ReadLines(path).Select(line => line.Split(',')).ToList();
        return new(rows[0], [.. rows.Skip(1).Where(which)]);
    }

    public string Text => string.Concat(Rows.Prepend(Columns).Select(row => string.Join(',', row) + "\n"));

    /// <summary>The file with another row in the place of one.</summary>
    public FileSlips With(int row, string[] told) => this with { Rows = [.. Rows.Select((r, i) => i == row ? told : r)] };

    /// <summary>Without some lines, as an editor counts them.</summary>
    public FileSlips Without(IReadOnlySet<int> lines) => this with { Rows = [.. Rows.Where((_, i) => !lines.Contains(i + 2))] };

    /// <summary>A row with a slip in one field; null where there is none to make.</summary>
    public string[]? Spoil(int row, int column, Random chance)
    {
        var told = Rows[row][column];
        var spoiled = told.Length == 0 ? told
            : Columns[column] == "taken_at" ? Moment(DateTimeOffset.Parse(told, CultureInfo.InvariantCulture), chance)
            : double.TryParse(told, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? Number(told, chance)
            : Rows[chance.Next(Rows.Count)][column];
        return spoiled == told ? null : [.. Rows[row].Select((field, i) => i == column ? spoiled : field)];
    }

    private static string Moment(DateTimeOffset at, Random chance) => chance.Next(6) switch
    {
        0 => "",
        1 => Written(at.AddDays(-1)),
        2 => Written(at.AddMonths(-1)),
        3 => Written(at.AddYears(-1)),
        4 when at.Day <= 12 => Written(new DateTimeOffset(at.Year, at.Day, at.Month, at.Hour, 0, 0, at.Offset)),
        _ => Written(at.AddMonths(1)),
    };

    private static string Written(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:ssK", CultureInfo.InvariantCulture);

    private static string Number(string told, Random chance)
    {
        if (told.Length < 2) return told + "0";
        var i = chance.Next(told.Length - 1);
        return chance.Next(7) switch
        {
            0 => "",
            1 => told[..i] + told[i + 1] + told[i] + told[(i + 2)..],
            2 => told.Remove(i, 1),
            3 => told.Insert(i, $"{chance.Next(10)}"),
            4 => told.Replace(".", "", StringComparison.Ordinal),
            5 => told.Insert(i, $"{told[i]}"),
            _ => Math.Round(Math.Pow(10, 7 * chance.NextDouble())).ToString(CultureInfo.InvariantCulture),
        };
    }
}
