using System.Globalization;
using WearWatch.Chains.Families;
using WearWatch.Running;

namespace WearWatch.Plant.Files;

/// <summary>The fields of one row by column name, read as what they should be; what is wrong is collected.</summary>
public sealed class RowFields(IReadOnlyDictionary<string, int> columns, TimeZoneInfo zone, FileDialect? dialect = null)
{
    /// <summary>No hour counter shows more.</summary>
    public const double MostCounterH = 1e7;

    /// <summary>Longer texts are a slip of the file.</summary>
    public const int LongestText = 200;

    private readonly List<(string Column, Phrase Reason)> faults = [];
    private IReadOnlyList<string> fields = [];

    /// <summary>What is wrong with the row so far.</summary>
    public IReadOnlyList<(string Column, Phrase Reason)> Faults => faults;

    /// <summary>A row that is told by column rather than in order; what is left out is empty.</summary>
    public static RowFields Of(IEnumerable<string> columns, IReadOnlyDictionary<string, string> texts, TimeZoneInfo zone)
    {
        string[] names = [.. columns];
        var row = new RowFields(names.Index().ToDictionary(c => c.Item, c => c.Index), zone);
        row.Take([.. names.Select(name => texts.GetValueOrDefault(name, ""))]);
        return row;
    }

    /// <summary>Goes to another row.</summary>
    public void Take(IReadOnlyList<string> row)
    {
        fields = row;
        faults.Clear();
        if (row.Any(field => field.Contains('\0', StringComparison.Ordinal))) Fault("row", $"A text holds no NUL character.");
    }

    /// <summary>Whether the file has the column.</summary>
    public bool Has(string column) => columns.ContainsKey(column);

    /// <summary>Notes a fault.</summary>
    public void Fault(string column, Phrase reason) => faults.Add((column, reason));

    /// <summary>The text of a field without surrounding blanks; empty where the file has no such column.</summary>
    public string Text(string column) => columns.TryGetValue(column, out var at) && at < fields.Count ? fields[at].Trim() : "";

    /// <summary>A text that must not be empty.</summary>
    public string Needed(string column, Phrase what)
    {
        var text = Text(column);
        if (text.Length == 0) Fault(column, $"Empty: {what}");
        return text;
    }

    /// <summary>A thing with what the row says in those of its columns that the file has.</summary>
    public T Fill<T>(IReadOnlyList<FileColumn<T>> all, T blank)
    {
        foreach (var column in all.Where(c => Has(c.Name)))
        {
            if (column.Needed is { } what) Needed(column.Name, what);
            blank = column.Read(this, blank);
        }

        return blank;
    }

    /// <summary>A text of at most so many characters.</summary>
    public string Label(string column, int longest = LongestText)
    {
        var text = Text(column);
        if (text.Length > longest) Fault(column, $"Longer than {longest} characters.");
        return text;
    }

    /// <summary>Yes or no; empty is no.</summary>
    public bool Flag(string column)
    {
        var text = Text(column).ToLowerInvariant();
        if (text is not ("" or "yes" or "no" or "true" or "false" or "1" or "0"))
            Fault(column, $"'{text}' is not one of yes, no.");
        return text is "yes" or "true" or "1";
    }

    /// <summary>The teeth of sprockets, such as <c>17 75</c>.</summary>
    public IReadOnlyList<int> Teeth(string column)
    {
        var teeth = new List<int>();
        foreach (var text in Text(column).Split([' ', ';', '/'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (int.TryParse(text, out var z) && z is >= 5 and <= 1000) teeth.Add(z);
            else Fault(column, $"'{text}' is not a number of teeth from 5 to 1000; write them apart by blanks, such as 17 75.");
        }

        return teeth;
    }

    /// <summary>The text of a number as our own files have it; empty when the field is empty or at fault.</summary>
    public string Figure(string column)
    {
        var (text, fault) = (dialect ?? FileDialect.Ours).Figure(Text(column));
        if (fault is null) return text;
        Fault(column, fault);
        return "";
    }

    /// <summary>A number within bounds; null when the field is empty or at fault.</summary>
    public double? Number(string column, double least, double most)
    {
        var text = Figure(column);
        if (text.Length == 0) return null;
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
        {
            Fault(column, $"'{text}' is not a number.");
            return null;
        }

        if (value >= least && value <= most) return value;
        Fault(column,
            $"{value} is out of range: it lies between {least} and {most}.");
        return null;
    }

    /// <summary>A whole number within bounds; null when the field is empty or at fault.</summary>
    public int? Whole(string column, int least, int most)
    {
        if (Number(column, least, most) is not { } value) return null;
        if (value == Math.Floor(value)) return (int)value;
        Fault(column, $"'{Text(column)}' is not a whole number.");
        return null;
    }

    /// <summary>
    /// A moment by ISO 8601, or as the file writes dates; without an offset in plant time. Null when empty or at fault.
    /// </summary>
    public DateTimeOffset? Moment(string column)
    {
        var (text, fault) = (dialect ?? FileDialect.Ours).Moment(Text(column));
        if (fault is not null) Fault(column, fault);
        if (text.Length == 0 || fault is not null) return null;
        var (moment, why) = MomentText.Read(text, zone);
        if (why is not null) Fault(column, why);
        return moment;
    }

    /// <summary>A count of hours; null for none.</summary>
    public static RunningHours? Hours(double? hours) => hours is { } h ? new RunningHours(h) : null;

    /// <summary>A moment as files have it; empty for none.</summary>
    public static string Text(DateTimeOffset? moment) =>
        moment?.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ss.FFFFFFFZ", CultureInfo.InvariantCulture) ?? "";

    /// <summary>A number as files have it, to the last digit; empty for none.</summary>
    public static string Text(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    /// <summary>A column's value as files have it; empty for none.</summary>
    public static string TextOf(object? value) => value switch
    {
        null or false => "",
        true => "yes",
        string text => text,
        DateTimeOffset moment => Text(moment),
        var number => Text(Convert.ToDouble(number, CultureInfo.InvariantCulture)),
    };

    /// <summary>A kind of chain; null where the field is empty or at fault.</summary>
    public ChainFamily? Family(string column)
    {
        var text = Text(column);
        if (text.Length == 0) return null;
        if (ChainFamily.Find(text) is { } family) return family;
        Fault(column, $"'{text}' is not one of {string.Join(", ", ChainFamily.All)}.");
        return null;
    }

    /// <summary>One of a few words; null when the field is empty or at fault.</summary>
    public T? Word<T>(string column, IReadOnlyDictionary<string, T> words)
        where T : struct, Enum
    {
        var text = Text(column);
        if (text.Length == 0) return null;
        if (words.TryGetValue(text.ToLowerInvariant(), out var word)) return word;
        Fault(column, $"'{text}' is not one of {string.Join(", ", words.Keys)}.");
        return null;
    }
}
