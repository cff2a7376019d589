using System.Runtime.Versioning;

namespace WearWatch.Plant.Settings;

/// <summary>Where everything is kept: the database and the inbox.</summary>
public sealed class DataFolder
{
    /// <summary>Makes the folder where it is missing.</summary>
    /// <param name="path">The folder's path.</param>
    public DataFolder(string path)
    {
        Root = Path.GetFullPath(path);
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(Inbox);
            return;
        }

        Directory.CreateDirectory(Root, OwnersOnly);
        Close(Root);
        Directory.CreateDirectory(Inbox);
    }

    private const UnixFileMode OwnersOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private const UnixFileMode Others = UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    /// <summary>Takes everybody's rights away; a group that the plant let in stays.</summary>
    [UnsupportedOSPlatform("windows")]
    private static void Close(string path)
    {
        if (File.GetUnixFileMode(path) is var mode && (mode & Others) != 0) File.SetUnixFileMode(path, mode & ~Others);
    }

    /// <summary>The folder itself.</summary>
    public string Root { get; }

    /// <summary>The SQLite file.</summary>
    public string Database => Path.Combine(Root, "wearwatch.db");

    /// <summary>Where files to take in are dropped.</summary>
    public string Inbox => Path.Combine(Root, "inbox");
}
