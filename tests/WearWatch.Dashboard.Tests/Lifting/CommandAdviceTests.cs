using System.Text.RegularExpressions;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>
/// Every command of the command line tells of chains that lift nothing that may hurt someone, and bears the caution. The commands
/// are read from the table that the help prints: a new one fails until lines of it stand here.
/// </summary>
public sealed partial class CommandAdviceTests(LiftingPlantHost plant) : IClassFixture<LiftingPlantHost>, IDisposable
{
    private static readonly string[] Answers = ["", " --json"];
    private static readonly string[] LengthsMm = ["279.6", "281", "283", "290"];
    private static readonly string[] DiametersMm = ["4.9", "4.5", "4.1"];
    private static readonly string[] Percents = ["0.4", "2.2", "3.4"];
    private static readonly string[] Temperatures = ["20", "250"];

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-advice");

    private static IEnumerable<string> Kinds =>
        ChainFamily.All.Where(f => f.LiftsByNature || f.IsUsual).Select(f => $"--family {f.Name} --lifts");

    /// <summary>A type of each kind that has one.</summary>
    private static IEnumerable<string> Types => ChainCatalogue.All.Where(t => t.Family.LiftsByNature || t.Family.IsUsual)
        .GroupBy(t => t.Family).Select(g => g.First().Designation);

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task Every_command_tells_the_caution_and_nothing_forbidden()
    {
        foreach (var file in LiftingChains.Files(TimeProvider.System.GetUtcNow()))
        {
            await using var to = File.Create(Path.Combine(folder.FullName, file.Name));
            await using var from = file.Open();
            await from.CopyToAsync(to, TestContext.Current.CancellationToken);
        }

        await File.WriteAllTextAsync(
            Path.Combine(folder.FullName, "questions.csv"), "id,chain,limit_pct,readings_known\n1,leaf-low,3,2\n",
            TestContext.Current.CancellationToken);
        List<string> faults = [];
        foreach (var command in await CommandsAsync(""))
            foreach (var line in Lines(command)) faults.AddRange(await FaultsAsync($"{command} {line}"));
        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
    }

    /// <summary>Lines of a command that tell of chains that lift, in each state that it can be asked about.</summary>
    private IEnumerable<string> Lines(string command) => command switch
    {
        "gauge" => [
            .. from kind in Kinds from mm in LengthsMm from json in Answers
               select $"--pitch-mm 25.4 --pitches 11 --length-mm {mm} {kind}{json}",
            .. from json in Answers from d in DiametersMm
               select "--pitch-mm 15 --family round_link --link-diameter-new 5 --one-link 15.2 --over-links 166.5 "
                   + $"--d1 {d} --d2 4.9{json}",
        ],
        "limit" => from kind in Kinds
                   from percent in Percents
                   from json in Answers
                   select $"{kind} --elongation-pct {percent} --take-up-mm 60 --chain-pitches 120 --pitch-mm 25.4{json}",
        "drive" => from type in Types
                   from json in Answers
                   select $"--type {type} --lifts --teeth 19 --driven-teeth 38 --rpm 20 --power 0.01 --centre 1000 "
                       + $"--lubrication manual --ambient-c 20{json}",
        "lubrication" => from kind in Kinds
                         from hot in Temperatures
                         from json in Answers
                         select $"--pitch-mm 25.4 {kind} --speed 0.3 --ambient-c {hot}{json}",
        "forecast" => [$"{folder.FullName} --out {folder.FullName}/forecasts.csv"],
        "backtest" =>
            [$"{folder.FullName} --questions {folder.FullName}/questions.csv --out {folder.FullName}/answers.csv"],
        "import" =>
            [$"{folder.FullName} --data {folder.FullName}/plant", $"{folder.FullName} --data {folder.FullName}/plant --json"],
        "plan propose" or "plan show" => [$"--data {plant.DataFolder}", $"--data {plant.DataFolder} --json"],
        "plan packages" or "lifting" => [$"--data {plant.DataFolder}"],

        // What these tell is no word about a chain's state: entries as they were told, decisions that were handed in, a server
        // without pages, boards without chains; the demonstration is taken in as import does.
        "export" => [$"{folder.FullName}/out --data {plant.DataFolder}"],
        "backup" => [$"{folder.FullName}/backups --data {plant.DataFolder}"],
        "verify" => [$"--data {plant.DataFolder}"],
        "plan save" or "serve" or "demo" or "boards" or "restore" => [],
        _ => throw new InvalidOperationException($"Say here how '{command}' tells of chains that lift."),
    };

    private async Task<List<string>> FaultsAsync(string line)
    {
        var (output, error) = await RunAsync(line);
        var text = output + "\n" + error;
        foreach (var file in folder.GetFiles("*.csv").Where(f => f.Name is "forecasts.csv" or "answers.csv"))
        {
            text += "\n" + await File.ReadAllTextAsync(file.FullName, TestContext.Current.CancellationToken);
            file.Delete();
        }

        var faults = AdviceText.Forbidden(text).Select(s => $"{line}: {s}").ToList();
        var names = LiftingChains.Names.Any(name => text.Contains(name, StringComparison.Ordinal)) && AdviceText.Judges(text);
        if ((names || TellsOfChains().IsMatch(line)) && !AdviceText.HasCaution(text)) faults.Add($"{line}: no caution: {text}");
        return faults;
    }

    /// <summary>The commands that do something, from what the help lists.</summary>
    private static async Task<IReadOnlyList<string>> CommandsAsync(string above)
    {
        var (help, _) = await RunAsync($"{above} --help");
        var listed = Listed().Match(help).Groups[1].Value;
        if (listed.Length == 0) return [above.Trim()];
        List<string> found = [];
        foreach (Match name in Name().Matches(listed)) found.AddRange(await CommandsAsync($"{above} {name.Groups[1].Value}"));
        return found;
    }

    private static async Task<(string Output, string Error)> RunAsync(string line)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        await CommandLine.RunAsync(line.Split(' ', StringSplitOptions.RemoveEmptyEntries), output, error);
        return (output.ToString(), error.ToString());
    }

    [GeneratedRegex("^(gauge|limit|drive|oil|forecast|backtest|lifting) ")]
    private static partial Regex TellsOfChains();

    [GeneratedRegex(@"Commands:\r?\n((?:  .*\r?\n)+)")]
    private static partial Regex Listed();

    [GeneratedRegex("(?m)^  ([a-z]+)")]
    private static partial Regex Name();
}
