using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace WearWatch.Browser.Tests;

/// <summary>The real dashboard on a real socket, with a data folder of its own.</summary>
public sealed class DashboardHost : WebApplicationFactory<Program>
{
    public string DataFolder { get; } = Directory.CreateTempSubdirectory("wearwatch-browser-").FullName;

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Development"); // static files of packages are served unpublished only there
        builder.UseSetting("WearWatch:DataFolder", DataFolder);
        builder.UseSetting("Logging:LogLevel:Default", "Warning");
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(DataFolder)) Directory.Delete(DataFolder, recursive: true);
    }
}
