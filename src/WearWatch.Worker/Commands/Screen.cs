using Spectre.Console;
using WearWatch.Chains;
using WearWatch.Plant.Intake;

namespace WearWatch.Worker.Commands;

/// <summary>Where a command writes to.</summary>
/// <param name="Output">Results, for other programs to read.</param>
/// <param name="Error">Refusals and remarks, for people.</param>
/// <param name="ShowsProgress">Whether a person watches, so that long work shows how far it is.</param>
public sealed record Screen(TextWriter Output, TextWriter Error, bool ShowsProgress)
{
    /// <summary>Writes remarks as <c>file:line: column: reason</c>; those that cost no row say so first.</summary>
    public void Write(IEnumerable<RowRemark> remarks)
    {
        foreach (var remark in remarks)
            Error.WriteLine($"{remark}{KindOf(remark)}");
    }

    /// <summary>Writes what no figure says of the chains that lift, once for all of them.</summary>
    public void WriteCautions(IEnumerable<ChainCard> chains)
    {
        string[] lifting = [.. chains.Where(c => c.HoldsLoad).Select(c => c.Name)];
        if (lifting.Length > 0) Error.WriteLine($"Caution for {string.Join(", ", lifting)}: {Caution.Lifting}");
    }

    /// <summary>Does long work with a bar that shows how far it is, if a person watches.</summary>
    public async Task<T> WithProgressAsync<T>(string what, Func<IProgress<double>, Task<T>> work)
    {
        if (!ShowsProgress) return await work(new Bar(_ => { }));
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Error) });
        return await console.Progress().AutoClear(true).StartAsync(async context =>
        {
            var task = context.AddTask(what, maxValue: 1);
            return await work(new Bar(share => task.Value = share));
        });
    }

    private static string KindOf(RowRemark remark) => remark.Kind switch
    {
        RemarkKind.Waiting => " (to be confirmed)",
        RemarkKind.Warning => " (warning)",
        _ => "",
    };

    /// <summary>Tells at once, on the teller's thread.</summary>
    private sealed class Bar(Action<double> show) : IProgress<double>
    {
        public void Report(double value) => show(value);
    }
}
