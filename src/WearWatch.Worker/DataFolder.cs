using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Options;

namespace WearWatch.Worker;

/// <summary>Where everything is kept: the database and the inbox.</summary>
public sealed class DataFolder
{
    public DataFolder(IOptions<WearWatchOptions> options, IHostEnvironment host)
        : this(Path.Combine(host.ContentRootPath, options.Value.DataFolder))
    {
    }

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
