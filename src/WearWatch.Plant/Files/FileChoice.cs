namespace WearWatch.Plant.Files;

/// <summary>What a person says of a file, before what its rows tell by themselves.</summary>
public sealed record FileChoice
{
    /// <summary>Nothing: the file tells all of it.</summary>
    public static FileChoice None { get; } = new();

    /// <summary>What is in it; null for what its header tells.</summary>
    public FileKind? Kind { get; init; }

    /// <summary>What stands between the columns; null for what its header tells.</summary>
    public char? Separator { get; init; }

    /// <summary>The decimal sign; null for what its numbers tell.</summary>
    public char? DecimalSign { get; init; }

    /// <summary>The order of dates that are not by ISO 8601; null for what its dates tell.</summary>
    public DateOrder? Dates { get; init; }

    /// <summary>The code page of its letters, such as 1252; null for what its bytes tell.</summary>
    public int? CodePage { get; init; }

    /// <summary>The sheet of a workbook; empty for the first that holds rows.</summary>
    public string Sheet { get; init; } = "";

    /// <summary>Its columns by their names in small letters, each with our name; an empty one leaves the column out.</summary>
    public IReadOnlyDictionary<string, string> Columns { get; init; } = new Dictionary<string, string>();

    /// <summary>Our name of a column.</summary>
    public string NameOf(string theirs) =>
        theirs.ToLowerInvariant() is var name && Columns.TryGetValue(name, out var ours) ? ours : name;
}
