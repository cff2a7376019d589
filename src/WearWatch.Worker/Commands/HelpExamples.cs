using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace WearWatch.Worker.Commands;

/// <summary>Puts examples under a command's help, since people learn a command by one that works.</summary>
internal static class HelpExamples
{
    public static T WithExamples<T>(this T command, params string[] lines)
        where T : Command
    {
        if (command.Options.OfType<HelpOption>().SingleOrDefault() is not { } help) command.Options.Add(help = new HelpOption());
        help.Action = new HelpWithExamples((HelpAction)help.Action!, lines);
        return command;
    }

    private sealed class HelpWithExamples(HelpAction help, string[] lines) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            var code = help.Invoke(parseResult);
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("Examples:");
            foreach (var line in lines) output.WriteLine("  " + line);
            output.WriteLine();
            return code;
        }
    }
}
