using System.CommandLine;
using System.CommandLine.Invocation;

namespace WearWatch.Worker.Commands;

/// <summary>The command line <c>wearwatch</c>.</summary>
public static class CommandLine
{
    /// <summary>Does what a command line says.</summary>
    /// <param name="args">The words after the command's name.</param>
    /// <param name="output">Where results go; standard output if not given.</param>
    /// <param name="error">Where refusals and progress go; standard error if not given.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, TextWriter? output = null, TextWriter? error = null)
    {
        var screen =
            new Screen(output ?? Console.Out, error ?? Console.Error, ShowsProgress: error is null && !Console.IsErrorRedirected);
        var parsed = Root(screen).Parse(args);
        var isWrong = parsed.Action is ParseErrorAction;
        if (parsed.Action is ParseErrorAction wrong) wrong.ShowHelp = false;
        // Results alone go to standard output: what is said about a wrong command goes where its fault goes.
        var configuration = new InvocationConfiguration
        {
            Output = isWrong ? screen.Error : screen.Output,
            Error = screen.Error,
            EnableDefaultExceptionHandler = false,
        };
        try
        {
            var code = await parsed.InvokeAsync(configuration);
            if (!isWrong) return code;
            await screen.Error.WriteLineAsync("Add --help to see what is wanted.");
            return ExitCode.WrongUsage;
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Refused;
        }
        catch (Exception e) when (BrokenStart.Of(e) is { } broken)
        {
            await screen.Error.WriteLineAsync(broken.ToString());
            return broken.Code;
        }
        catch (Exception e) when (e is IOException or InvalidDataException)
        {
            await screen.Error.WriteLineAsync(e.Message);
            return ExitCode.Refused;
        }
    }

    private static RootCommand Root(Screen screen)
    {
        var root = new RootCommand("Watches the wear of a plant's chains: how long each will last, and when to lubricate it.")
        {
            GaugeCommand.Make(screen),
            LimitCommand.Make(screen),
            DriveCommand.Make(screen),
            OilCommand.Make(screen),
            ForecastCommand.Make(screen),
            BacktestCommand.Make(screen),
            ImportCommand.Make(screen),
            ExportCommand.Make(screen),
            BackupCommand.Make(screen),
            RestoreCommand.Make(screen),
            VerifyCommand.Make(screen),
            PlanCommand.Make(screen),
            LiftingCommand.Make(screen),
            ServeCommand.Make(),
            DemoCommand.Make(screen),
            BoardsCommand.Make(screen),
        };
        root.HelpName = "wearwatch";
        return root.WithExamples(
            "wearwatch gauge --pitch-mm 25.4 --pitches 40 --length-mm 1028.7",
            "wearwatch forecast ./plant-files --out forecasts.csv",
            "wearwatch import ./plant-files --data ./data",
            "Exit codes: 0 done, 1 input was refused (each refusal on standard error as file:line: column: reason), 2 "
            + "wrong usage, 3 to 10 a start that could not be: docs/operating.md lists them.");
    }
}
