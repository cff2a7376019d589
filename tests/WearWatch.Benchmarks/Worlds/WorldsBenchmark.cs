using System.Globalization;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Running;
using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Worlds;

/// <summary>
/// The method in worlds of foreign physics beside simpler ones, asked the same questions: a table of docs/method.md.
/// </summary>
/// <remarks>
/// Every chain is asked at a quarter, half and three quarters of its life to each of two limits. What the plant teaches (prior,
/// constants, the Wiener process's figures) comes from the other half of the chains.
/// </remarks>
internal static class WorldsBenchmark
{
    private const int Seed = 17;
    private static readonly double[] Shares = [0.25, 0.5, 0.75];

    /// <summary>
    /// Prints the table; <c>WORLDS</c> names some worlds, <c>WORLD_CHAINS</c> and <c>WORLD_SEED</c> set another fleet.
    /// </summary>
    public static bool Run(TextWriter output)
    {
        var names = Environment.GetEnvironmentVariable("WORLDS")?.Split(',');
        var counts = Environment.GetEnvironmentVariable("WORLD_CHAINS")?.Split(',').Select(int.Parse).ToArray() ?? [80, 24];
        var seed = int.Parse(Environment.GetEnvironmentVariable("WORLD_SEED") ?? $"{Seed}", CultureInfo.InvariantCulture);
        foreach (var chains in counts)
        {
            output.WriteLine($"\n{chains} chains: median error / bands that held / early end late / width\n");
            output.WriteLine(
                "| world | the track | line | Theil-Sen | Wiener | false rises / found in 3 |\n|---|---|---|---|---|---|");
            foreach (var world in ForeignWorlds.All.Where(w => names is null || names.Contains(w.Name)))
                Print(output, world.Name, Answers(world, chains, seed, out var rises), rises);
        }

        return true;
    }

    private static List<(string Method, Decision Asked, RivalAnswer Answer)> Answers(
        World world, int count, int seed, out WorldRises rises)
    {
        var chains = WorldChain.Many(world, count, seed);
        var risen = WorldChain.Many(world, count, seed + 1, rises: true);
        rises = new();
        var answers = new List<(string, Decision, RivalAnswer)>();
        for (var half = 0; half < 2; half++)
        {
            var taught = chains.Where((_, i) => i % 2 != half).ToList();
            var prior = Prior(taught);
            var learned = SelfCalibration.Of([.. taught.Select(c => new TellingChain(prior, c.Life))], WearConstants.Default)
                .Else(WearConstants.Default);
            var (filter, wiener) = (new WearFilter(learned), new WienerFleet(taught.Select(c => c.Observations)));
            foreach (var chain in chains.Concat(risen).Where((_, i) => i % 2 == half)) rises.Look(chain, filter, prior);
            answers.AddRange(chains.Where((_, i) => i % 2 == half).AsParallel().AsOrdered().SelectMany(chain =>
                WorldChain.Limits.SelectMany((limit, i) => Shares.SelectMany(
                    share => Ask(chain, limit, share, chain.TrueHours[i], prior, filter, wiener)))));
        }

        return answers;
    }

    private static WearPrior Prior(List<WorldChain> taught)
    {
        var card = new ChainCard { Name = "C", Line = "L", PitchMm = 50.8, FittedCounter = RunningHours.Zero };
        return FleetTraining.Train([.. taught.Select(c => new FleetChain(card, c.Observations))], Seed)
            is FleetTrainingOutcome.Trained trained ? trained.Model.PriorFor(card) : WearPrior.Broad;
    }

    private static IEnumerable<(string Method, Decision Asked, RivalAnswer Answer)> Ask(
        WorldChain chain, double limit, double share, double trueHours, WearPrior prior, WearFilter filter, WienerFleet wiener)
    {
        var now = share * trueHours;
        Observation[] known = [.. chain.Observations.TakeWhile(o => o.HoursSinceFitting <= now)];
        var last = known.Length == 0 ? 0 : known[^1].HoursSinceFitting;
        var asked = new Decision("", limit, share, known.Length, last, now, trueHours);
        yield return ("the track", asked, RivalAnswer.Of(filter.Forecast(filter.Follow(prior, known), limit), last));
        double[] hours = [.. known.Select(o => o.HoursSinceFitting)], percents = [.. known.Select(o => o.ElongationPercent)];
        var line = known.Length > 1;
        yield return ("line", asked, line ? LeastSquares.Ask(hours, percents, limit) : RivalAnswer.None);
        yield return ("Theil-Sen", asked, line ? TheilSen.Ask(hours, percents, limit) : RivalAnswer.None);
        yield return ("Wiener", asked, wiener.Ask(known, limit));
    }

    private static void Print(
        TextWriter output, string world, List<(string Method, Decision Asked, RivalAnswer Answer)> answers,
        WorldRises rises)
    {
        var cells = answers.GroupBy(a => a.Method).Select(m => Cell([.. m.Select(a => (a.Asked, a.Answer))]));
        output.WriteLine($"| {world} | {string.Join(" | ", cells)} | {rises} |");
        output.Flush();
    }

    private static string Cell(List<(Decision Asked, RivalAnswer Answer)> answers)
    {
        var score = RivalScore.Of(answers);
        var bands = answers.Where(a => a.Answer is { Early: not null, Late: not null }).ToList();
        var late = (double)bands.Count(a => Math.Max(a.Answer.Early!.Value, a.Asked.NowHours) > a.Asked.TrueHours) / bands.Count;
        var width = Median.Of([.. bands.Select(a =>
            (Math.Max(a.Answer.Late!.Value, a.Asked.NowHours) - Math.Max(a.Answer.Early!.Value, a.Asked.NowHours))
            / (a.Asked.TrueHours - a.Asked.NowHours))]);
        return string.Create(
            CultureInfo.InvariantCulture, $"{score.MedianError:0.00} / {score.Coverage:0.00} / {late:0.00} / {width:0.00}");
    }
}
