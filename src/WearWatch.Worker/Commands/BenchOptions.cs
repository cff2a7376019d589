using System.CommandLine;
using System.Globalization;
using WearWatch.Plant.Bench;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Commands;

/// <summary>Options whose texts the bench reads: <c>--driven-teeth</c> is asked for as <c>driven_teeth</c>.</summary>
internal static class BenchOptions
{
    public static Option<string?> Text(string name, string description) => new("--" + name) { Description = description };

    public static Option<double?> Number(string name, string description) => new("--" + name) { Description = description };

    public static Option<int?> Whole(string name, string description) => new("--" + name) { Description = description };

    public static Option<bool> Tick(string name, string description) => new("--" + name) { Description = description };

    /// <summary>What a command line asks.</summary>
    public static Asked Asked(this ParseResult parsed) => new(name =>
    {
        var option = parsed.CommandResult.Command.Options.FirstOrDefault(o => o.Name == "--" + name.Replace('_', '-'));
        return option is null || parsed.GetResult(option) is null ? null : option switch
        {
            Option<double?> number => parsed.GetValue(number)?.ToString("R", CultureInfo.InvariantCulture),
            Option<int?> whole => parsed.GetValue(whole)?.ToString(CultureInfo.InvariantCulture),
            Option<bool> tick => parsed.GetValue(tick) ? "yes" : null,
            Option<string?> text => parsed.GetValue(text),
            _ => null,
        };
    });

    /// <summary>Tells an answer, or each refusal on standard error.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="tell">Writes what was worked out.</param>
    /// <param name="doubt">What speaks against telling it at all; null for nothing.</param>
    public static int Tell<T>(Screen screen, BenchAnswer<T> answer, Action<T> tell, Func<T, Refusal?>? doubt = null)
    {
        var worked = answer is BenchAnswer<T>.Answered answered ? answered.Result : default;
        var refusals = answer is BenchAnswer<T>.Refused refused ? refused.Refusals : doubt?.Invoke(worked!) is { } one
            ? [one]
            : [];
        foreach (var refusal in refusals) screen.Error.WriteLine($"{refusal.Field}: {refusal.Reason}");
        if (refusals.Count > 0) return ExitCode.Refused;
        tell(worked!);
        return ExitCode.Done;
    }
}
