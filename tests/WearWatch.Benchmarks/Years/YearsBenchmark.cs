using System.Globalization;

namespace WearWatch.Benchmarks.Years;

/// <summary>
/// Whether following the advice pays: a mill lives ten years in six worlds, with the same luck run in six ways. A table of
/// docs/method.md.
/// </summary>
internal static class YearsBenchmark
{
    private const int Seed = 31;
    private const string Head =
        "| way | cost, thousands | swaps | breakdowns | life thrown away | readings | bands that held |\n"
        + "|---|---|---|---|---|---|---|";

    /// <summary>
    /// Prints the tables; <c>YEARS_WORLDS</c> names some worlds, <c>YEARS_SEED</c> sets another luck. False when a bar is missed.
    /// </summary>
    public static async Task<bool> RunAsync(TextWriter output)
    {
        var names = Environment.GetEnvironmentVariable("YEARS_WORLDS")?.Split(',');
        var seed = int.Parse(Environment.GetEnvironmentVariable("YEARS_SEED") ?? $"{Seed}", CultureInfo.InvariantCulture);
        var sums = new Dictionary<string, Ledger>();
        foreach (var world in YearsWorld.All.Where(w => names is null || names.Contains(w.Name)))
        {
            output.WriteLine($"\n**{world.Name}**\n\n{Head}");
            await PrintAsync(new FollowsWearWatch(), await Mill.RunAsync(world, seed, new FollowsWearWatch()));
            await PrintAsync(new FollowsWearWatch(true), await Mill.RunAsync(world, seed, new FollowsWearWatch(true)));
            await PrintAsync(new StraightLineWay(), await Mill.RunAsync(world, seed, new StraightLineWay()));
            await PrintAsync(new FixedInterval(0), await BestIntervalAsync(world, seed));
            await PrintAsync(new WhenMeasuredAtLimit(), await Mill.RunAsync(world, seed, new WhenMeasuredAtLimit()));
            await PrintAsync(new RunToFailure(), await Mill.RunAsync(world, seed, new RunToFailure()));
            await PrintAsync(new Oracle(), await Mill.RunAsync(world, seed, new Oracle()));
        }

        output.WriteLine($"\n**Sum**\n\n{Head}");
        foreach (var (name, sum) in sums) output.WriteLine($"| {name} | {sum} |");
        return Judge(output, sums);

        async Task PrintAsync(Way way, Ledger ledger)
        {
            if (!sums.TryGetValue(way.Name, out var sum)) sums.Add(way.Name, sum = new Ledger());
            sum.Add(ledger);
            await output.WriteLineAsync($"| {way.Name} | {ledger} |");
            await output.FlushAsync();
        }
    }

    private static async Task<Ledger> BestIntervalAsync(YearsWorld world, int seed)
    {
        var tried = await Task.WhenAll(
            FixedInterval.Choices.Select(hours => Task.Run(() => Mill.RunAsync(world, seed, new FixedInterval(hours)))));
        return tried.MinBy(ledger => ledger.Cost)!;
    }

    private static bool Judge(TextWriter output, Dictionary<string, Ledger> sums)
    {
        var ours = sums[new FollowsWearWatch().Name];
        (string What, double Reached, double Bar, bool AtMost)[] bars =
        [
            ("cost over the best fixed interval", ours.Cost / sums[new FixedInterval(0).Name].Cost, 0.80, true),
            ("cost over the straight line", ours.Cost / sums[new StraightLineWay().Name].Cost, 0.90, true),
            ("cost over the oracle", ours.Cost / sums[new Oracle().Name].Cost, 1.25, true),
            ("breakdowns of swaps", (double)ours.Breakdowns / ours.Swaps, 0.05, true),
            ("bands that held, at least", (double)ours.Held / ours.Forecasts, 0.85, false),
            ("bands that held, at most", (double)ours.Held / ours.Forecasts, 0.95, true),
        ];
        output.WriteLine();
        var kept = true;
        foreach (var (what, reached, bar, atMost) in bars)
        {
            var keeps = atMost ? reached <= bar : reached >= bar;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"- {what}: {reached:0.00} (bar {bar:0.00}){(keeps ? "" : ": MISSED")}"));
            kept &= keeps;
        }

        return kept;
    }
}
