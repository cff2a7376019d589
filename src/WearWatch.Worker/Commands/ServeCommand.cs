using System.CommandLine;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch serve</c>: the worker alone, without the dashboard.</summary>
internal static class ServeCommand
{
    public static Command Make()
    {
        var data = Shared.Data();
        var command =
            new Command("serve", "Runs the worker without the dashboard: inbox, review, nightly training. Stop it with Ctrl+C.")
        {
            data,
        };
        command.SetAction(async (parsed, ct) =>
        {
            using var host = Shared.Host(parsed.GetRequiredValue(data), LogLevel.Information);
            await host.OpenMemoryAsync(ct);
            await host.RunAsync(ct);
            return ExitCode.Done;
        });
        return command.WithExamples("wearwatch serve --data /srv/wearwatch");
    }
}
