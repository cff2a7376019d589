using WearWatch.Benchmarks.Desk;
using WearWatch.Benchmarks.Entries;
using WearWatch.Benchmarks.Intake;
using WearWatch.Benchmarks.Passes;
using WearWatch.Benchmarks.Planning;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Benchmarks.Speed;
using WearWatch.Benchmarks.Worlds;

// dotnet run -c Release --project tests/WearWatch.Benchmarks [name ...]; without a name: speed.
(string Name, Func<TextWriter, Task<bool>> Run)[] benchmarks =
[
    ("speed", output => Task.FromResult(SpeedBenchmark.Run(output))),
    ("rivals", RivalTable.RunAsync),
    ("intake", IntakeBenchmark.RunAsync),
    ("plan", output => PlanBenchmark.RunAsync(output, TimeSpan.FromMinutes(5))),
    ("desk", DeskBenchmark.RunAsync),
    ("passes", output => Task.FromResult(PassBenchmark.Run(output))),
    ("slips", output => Task.FromResult(SlipBenchmark.Run(output))),
    ("moves", output => Task.FromResult(MovesBenchmark.Run(output))),
    ("lengths", output => Task.FromResult(LengthBenchmark.Run(output))),
    ("worlds", output => Task.FromResult(WorldsBenchmark.Run(output))),
];

string[] asked = args.Length == 0 ? ["speed"] : args;
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
