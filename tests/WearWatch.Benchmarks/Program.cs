using System.Globalization;
using WearWatch.Benchmarks.Decade;
using WearWatch.Benchmarks.Desk;
using WearWatch.Benchmarks.Entries;
using WearWatch.Benchmarks.Intake;
using WearWatch.Benchmarks.Passes;
using WearWatch.Benchmarks.Planning;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Benchmarks.Speed;
using WearWatch.Benchmarks.Worlds;
using WearWatch.Benchmarks.Years;

// dotnet run -c Release --project tests/WearWatch.Benchmarks [name ...] [folder ...]; without a name: speed. A folder holds
// chains.csv, events.csv and readings.csv of a fleet, and slips and lengths make their slips there; a number says how many of
// each, 1,000 without one.
string[] folders = [.. args.Where(Directory.Exists)];
string[] numbers = [.. args.Where(a => a.All(char.IsAsciiDigit))];
var entries = numbers is [var number, ..] ? int.Parse(number, CultureInfo.InvariantCulture) : 1_000;
(string Name, Func<TextWriter, Task<bool>> Run)[] benchmarks =
[
    ("speed", output => Task.FromResult(SpeedBenchmark.Run(output))),
    ("rivals", RivalTable.RunAsync),
    ("intake", IntakeBenchmark.RunAsync),
    ("plan", output => PlanBenchmark.RunAsync(output, TimeSpan.FromMinutes(5))),
    ("desk", DeskBenchmark.RunAsync),
    ("passes", output => Task.FromResult(PassBenchmark.Run(output))),
    ("courses", output => Task.FromResult(PassBenchmark.RunCourses(output))),
    ("slips", output => Task.FromResult(SlipBenchmark.Run(output, folders, entries))),
    ("moves", output => Task.FromResult(MovesBenchmark.Run(output))),
    ("lengths", output => Task.FromResult(LengthBenchmark.Run(output, folders, entries))),
    ("worlds", output => Task.FromResult(WorldsBenchmark.Run(output))),
    ("years", YearsBenchmark.RunAsync),
    ("decade", DecadeBenchmark.RunAsync),
];

string[] asked = args.Except(folders).Except(numbers).ToArray() is { Length: > 0 } told ? told : ["speed"];
if (asked.Except(benchmarks.Select(b => b.Name)).ToArray() is { Length: > 0 } unknown)
{
    Console.Error.WriteLine(
        $"There is no benchmark {string.Join(", ", unknown)}; there are: {string.Join(", ", benchmarks.Select(b => b.Name))}.");
    return 2;
}

var kept = true;
foreach (var (name, run) in benchmarks)
{
    if (asked.Contains(name)) kept &= await run(Console.Out);
}

return kept ? 0 : 1;
