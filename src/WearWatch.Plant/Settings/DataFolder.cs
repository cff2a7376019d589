namespace WearWatch.Plant.Settings;

/// <summary>Where everything is kept: the database and the inbox.</summary>
public sealed class DataFolder
{
    /// <summary>Makes the folder where it is missing.</summary>
    /// <param name="path">The folder's path.</param>
    public DataFolder(string path)
    {
        Root = Path.GetFullPath(path);
        Directory.CreateDirectory(Inbox);
    }

    /// <summary>The folder itself.</summary>
    public string Root { get; }

    /// <summary>The SQLite file.</summary>
    public string Database => Path.Combine(Root, "wearwatch.db");

    /// <summary>Where files to take in are dropped.</summary>
    public string Inbox => Path.Combine(Root, "inbox");
}
