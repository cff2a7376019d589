using System.CommandLine;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using WearWatch.Plant.Folders;

namespace WearWatch.Worker.Commands;

/// <summary>Options that several commands have, and the host behind those that need the plant's memory.</summary>
internal static class Shared
{
    public static Option<bool> Json() => new("--json") { Description = "Answer as JSON." };

    public static Option<DirectoryInfo> Data() => new("--data")
    {
        Description = "The data folder; made if it is not there.",
        DefaultValueFactory = _ => new DirectoryInfo(Environment.GetEnvironmentVariable("WearWatch__DataFolder") ?? "data"),
    };

    public static Option<FileInfo> Out(string description) => new("--out") { Description = description, Required = true };

    /// <summary>A folder that must be there; wrong usage if it is not.</summary>
    public static Argument<DirectoryInfo> Folder(string description) => new Argument<DirectoryInfo>("DIR")
    {
        Description = description,
    }.AcceptExistingOnly();

    /// <summary>Learns what a folder's chains teach, with its progress on the screen.</summary>
    public static async Task<FolderForecasts> LearnAsync(FleetFolder folder, Screen screen, CancellationToken ct)
    {
        var models =
            await screen.WithProgressAsync("Learning from the fleet", p => FolderModels.TrainAsync(folder.Chains, p, ct));
        var constants = await screen.WithProgressAsync(
            "Learning from chains that have run out", p => FolderConstants.CalibrateAsync(folder.Chains, models, p, ct));
        return new FolderForecasts(models, constants);
    }

    /// <summary>A host on a data folder, not started.</summary>
    public static IHost Host(DirectoryInfo data, LogLevel least = LogLevel.Warning)
    {
        var builder = Microsoft.Extensions.Hosting.Host.CreateApplicationBuilder();
        builder.Configuration
            .AddInMemoryCollection([new("WearWatch:DataFolder", data.FullName), new("WearWatch:Worker", "true")]);
        builder.Logging.SetMinimumLevel(least);
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        builder.Logging.AddConsole(options => options.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Services.AddWearWatch(builder.Configuration);
        return builder.Build();
    }
}
