namespace WearWatch.Plant.Files;

/// <summary>A file to take in.</summary>
/// <param name="Name">Its name, for the report.</param>
/// <param name="Open">Opens it for reading from its beginning; may be called more than once.</param>
public sealed record ImportFile(string Name, Func<Stream> Open)
{
    /// <summary>Whose import it is: a person, a key, or a way in such as the inbox.</summary>
    public required string By { get; init; }

    /// <summary>What a person says of it.</summary>
    public FileChoice Choice { get; init; } = FileChoice.None;

    /// <summary>The sheets of the workbook whose text this is, the one that was read first; empty for a file of text.</summary>
    public IReadOnlyList<string> Sheets { get; init; } = [];

    /// <summary>A file on disk.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="by">Whose import it is.</param>
    public static ImportFile OnDisk(string path, string by) =>
        new(Path.GetFileName(path), () => File.OpenRead(path)) { By = by };

    /// <summary>Who told a row, for its record: the file with its line, and whose import it was.</summary>
    public string Maker(int line) => FormattableString.Invariant($"{Name}:{line} ({By})");
}
