using System.Globalization;
using WearWatch.Plant.Folders;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>
/// The track beside simpler methods, asked the same questions with the same readings: the table of docs/method.md.
/// </summary>
internal static class RivalTable
{
    private static readonly (string Name, Func<double[], double[], double, RivalAnswer> Ask)[] Rivals =
    [
        ("least squares", LeastSquares.Ask),
        ("Theil-Sen", TheilSen.Ask),
        ("Tukey", TukeyBiweight.Ask),
    ];

    private static readonly (string Name, Func<RivalScore, double> Of)[] Measures =
    [
        ("Median error of the hours left", s => s.MedianError),
        ("Within 25 % of the hours left", s => s.WithinQuarter),
        ("Late warnings (middle beyond 1.1 of the true hours)", s => s.Late),
        ("90 % bands that held, of those that exist", s => s.Coverage),
        ("Bands with two ends", s => s.Bounded),
    ];

    public static async Task<bool> RunAsync(TextWriter output)
    {
        var data = Path.Combine(RepositoryFolder(), "tests", "data");
        var fleet = FleetFolder.Read(Path.Combine(data, "fleet-learning"), DateTimeOffset.UnixEpoch.AddYears(60));
        var models = await FolderModels.TrainAsync(fleet.Chains, new Progress<double>(), CancellationToken.None);
        var answers = Decision.Read(Path.Combine(data, "wear", "fleet", "decisions.csv"))
            .AsParallel().AsOrdered().SelectMany(d => Ask(d, fleet.Find(d.Chain)!, models)).ToList();

        foreach (var (measure, of) in Measures) Print(output, measure, of, answers);
        return true;
    }

    private static IEnumerable<(string Method, Decision Asked, RivalAnswer Answer)> Ask(
        Decision asked, FolderChain chain, FolderModels models)
    {
        var forecast = Backtest.Answer(
            chain.Card, chain.Readings, chain.Events, models.PriorFor(chain.Card), asked.LimitPercent, asked.ReadingsKnown);
        yield return ("the track", asked, RivalAnswer.Of(forecast, asked.LastReadingHours));

        var known = ChainHistory.Take(
            chain.Card, [.. chain.Readings.Take(asked.ReadingsKnown)], chain.Events).Current.Observations;
        double[] hours = [.. known.Select(o => o.HoursSinceFitting)], percents = [.. known.Select(o => o.ElongationPercent)];
        foreach (var (name, ask) in Rivals)
            yield return (name, asked, hours.Distinct().Count() < 2
                ? RivalAnswer.None
                : ask(hours, percents, asked.LimitPercent));
    }

    private static void Print(
        TextWriter output, string measure, Func<RivalScore, double> of,
        List<(string Method, Decision Asked, RivalAnswer Answer)> answers)
    {
        var cells = answers.Select(a => (a.Asked.LimitPercent, a.Asked.LifeShare)).Distinct()
            .OrderByDescending(c => c.LimitPercent).ThenBy(c => c.LifeShare).ToList();
        output.WriteLine($"\n**{measure}**\n");
        output.WriteLine("| method | "
            + string.Join(" | ", cells.Select(c => Text($"{c.LimitPercent:0.0} % @ {100 * c.LifeShare:0}"))) + " |");
        output.WriteLine("|---" + string.Concat(Enumerable.Repeat("|---", cells.Count)) + "|");
        foreach (var method in answers.GroupBy(a => a.Method))
        {
            var values = cells.Select(c => of(RivalScore.Of(
                [.. method.Where(a => (a.Asked.LimitPercent, a.Asked.LifeShare) == c).Select(a => (a.Asked, a.Answer))])));
            output.WriteLine($"| {method.Key} | " + string.Join(" | ", values.Select(v => Text($"{v:0.00}"))) + " |");
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string RepositoryFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "WearWatch.sln")))
            folder = folder.Parent ?? throw new DirectoryNotFoundException("WearWatch.sln was not found above the program.");
        return folder.FullName;
    }
}
