namespace WearWatch.Plant.Files;

/// <summary>A file to take in.</summary>
/// <param name="Name">Its name, for the report.</param>
/// <param name="Open">Opens it for reading from its beginning; may be called more than once.</param>
public sealed record ImportFile(string Name, Func<Stream> Open)
{
    /// <summary>A file on disk.</summary>
    public static ImportFile OnDisk(string path) => new(Path.GetFileName(path), () => File.OpenRead(path));
}
