using System.Globalization;
using WearWatch.Gauging.Studies;

namespace WearWatch.Dashboard.Engineer.Workbench.Studies;

/// <summary>Readings of a study as they were typed or pasted.</summary>
/// <remarks>
/// A line a reading: section, person, value, with tabs, semicolons or commas between; or a table as a spreadsheet gives it:
/// sections down, a column for each trial of each person, the people's names in the first line, repeated or once for all their
/// trials.
/// </remarks>
public static class StudyText
{
    private static readonly char[] Marks = ['\t', ';', ','];

    /// <summary>The readings in a text, or why there are none.</summary>
    public static (IReadOnlyList<StudyReading> Readings, Phrase? Wrong) Read(string text)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.TrimEnd('\r'))
            .Where(l => l.Trim().Length > 0).ToList();
        if (lines.Count < 2) return ([], $"Paste at least two lines.");
        var mark = Marks.FirstOrDefault(m => lines[0].Contains(m), '\t');
        List<string[]> cells = [.. lines.Select(l => l.Split(mark, StringSplitOptions.TrimEntries))];
        return cells[0].Length == 3 && cells.Skip(1).All(c => c.Length == 3) && !IsTable(cells) ? Long(cells) : Table(cells);
    }

    /// <summary>
    /// Three columns may be a table of one trial by two people; then the second cell of every line is a number.
    /// </summary>
    private static bool IsTable(List<string[]> cells) =>
        cells.Skip(1).All(c => Number(c[1]) is not null && Number(c[2]) is not null) && Number(cells[0][2]) is null
        && !cells[0][2].Contains("value", StringComparison.OrdinalIgnoreCase)
        && !cells[0][2].Contains("reading", StringComparison.OrdinalIgnoreCase);

    private static (IReadOnlyList<StudyReading>, Phrase?) Long(List<string[]> cells)
    {
        var readings = new List<StudyReading>();
        for (var row = Number(cells[0][2]) is null ? 1 : 0; row < cells.Count; row++)
        {
            if (Number(cells[row][2]) is not { } value) return ([], $"Line {row + 1}: '{cells[row][2]}' is not a number.");
            readings.Add(new StudyReading(cells[row][0], cells[row][1], value));
        }

        return (readings, null);
    }

    private static (IReadOnlyList<StudyReading>, Phrase?) Table(List<string[]> cells)
    {
        var readings = new List<StudyReading>();
        var people = PeopleOf(cells[0]);
        for (var row = 1; row < cells.Count; row++)
        {
            if (cells[row].Length > people.Length)
                return ([], $"Line {row + 1} has {cells[row].Length} columns, the first line {people.Length}.");
            for (var column = 1; column < cells[row].Length; column++)
            {
                if (cells[row][column].Length == 0) continue;
                if (people[column].Length == 0) return ([], $"Column {column + 1} has no name in the first line.");
                if (Number(cells[row][column]) is not { } value)
                    return ([], $"Line {row + 1}, column {column + 1}: '{cells[row][column]}' is not a number.");
                readings.Add(new StudyReading(cells[row][0], people[column], value));
            }
        }

        return (readings, null);
    }

    /// <summary>A name stands over its first trial only, or over each of them.</summary>
    private static string[] PeopleOf(string[] head)
    {
        var people = head.ToArray();
        for (var column = 2; column < people.Length; column++)
            if (people[column].Length == 0) people[column] = people[column - 1];
        return people;
    }

    /// <summary>Pairs of known and measured lengths, a line each.</summary>
    public static (IReadOnlyList<KnownReading> Readings, Phrase? Wrong) ReadKnown(string text)
    {
        var readings = new List<KnownReading>();
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Trim()).Where(l => l.Length > 0)
            .ToList();
        for (var row = 0; row < lines.Count; row++)
        {
            var cells = lines[row].Split(['\t', ';', ',', ' '], StringSplitOptions.RemoveEmptyEntries);
            if (cells is [var known, var measured] && Number(known) is { } k && Number(measured) is { } m)
                readings.Add(new KnownReading(k, m));
            else if (row > 0) return ([], $"Line {row + 1}: two numbers are wanted, the known length and the measured one.");
        }

        return readings.Count < 2 ? ([], $"At least two readings are wanted, better ten at three lengths.") : (readings, null);
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : null;
}
