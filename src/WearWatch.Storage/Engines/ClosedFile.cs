namespace WearWatch.Storage.Engines;

/// <summary>Files that only the user who runs WearWatch reads: they hold the hashes of passwords.</summary>
public static class ClosedFile
{
    private const UnixFileMode OwnersOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Makes an empty file where there is none, and closes one that others could read.</summary>
    /// <remarks>SQLite gives its logs the rights of the database.</remarks>
    public static void Make(string path)
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.OpenOrCreate,
            Access = FileAccess.ReadWrite,
            Share = FileShare.ReadWrite | FileShare.Delete,
        };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = OwnersOnly;
        using (new FileStream(path, options))
        {
        }

        if (!OperatingSystem.IsWindows() && File.GetUnixFileMode(path) != OwnersOnly) File.SetUnixFileMode(path, OwnersOnly);
    }
}
