using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Storage.Engines;
using WearWatch.Worker.Demo;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch demo</c>: the simulated mill into the plant's memory.</summary>
internal static class DemoCommand
{
    public static Command Make(Screen screen)
    {
        var data = Shared.Data();
        var live = new LiveOptions();
        var command = new Command("demo", "Loads a simulated mill of eighty chains with three years of readings, to try out.")
        {
            data,
        };
        live.AddTo(command);
        command.SetAction(async (parsed, ct) =>
        {
            using var host = Shared.Host(parsed.GetRequiredValue(data));
            await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
            var demo = host.Services.GetRequiredService<DemoPlant>();
            var report =
                await screen.WithProgressAsync("Loading the mill", p => demo.LoadAsync(new ImportCommand.ShareOfAll(3, p), ct));
            var code = ImportCommand.Tell(screen, report, asJson: false);
            if (code == ExitCode.Done && live.IsWanted(parsed))
                await live.RunAsync(parsed, host.Services.GetRequiredService<LiveDemo>(), screen, ct);
            return code;
        });
        return command.WithExamples("wearwatch demo --data ./demo-data",
            "wearwatch demo --data ./demo-data --live --fault moved-sensor --chain FP-04 --since-days 1.4");
    }
}
