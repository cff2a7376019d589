using System.Globalization;

namespace WearWatch.Benchmarks.Passes;

/// <summary>200 days of each kind at two sensors, sound and faulty; the bars of docs/signals.md.</summary>
internal static class PassBenchmark
{
    private const int Runs = 200;
    private const int Seed = 60_000;
    private const int CourseDays = 20;

    /// <summary>Prints what became of them; whether all bars are kept.</summary>
    public static bool Run(TextWriter output)
    {
        var kept = true;
        output.WriteLine("day | kept | wrong | covered | within 0.02 | mean u % | refused");
        foreach (var scenario in PassScenarios.All)
        {
            var score = PassTrial.Of(scenario, Runs, Seed);
            kept &= score.IsReached(scenario);
            output.WriteLine($"{scenario.Name} | {score.Kept} | {score.Wrong} | {score.Covered} | {score.Near} | "
                + string.Create(
                    CultureInfo.InvariantCulture, $"{score.Uncertainty / Math.Max(1, score.Kept + score.Wrong):0.0000} | ")
                + string.Join(", ", score.Refused.Select(r => $"{r.Key} {r.Value}"))
                + (score.IsReached(scenario) ? "" : " | MISSED"));
        }

        return RunCourses(output) && kept;
    }

    /// <summary>Days one after the other alone: moved overnight, sound and creeping.</summary>
    public static bool RunCourses(TextWriter output)
    {
        var small = Row("moved by 0.3 mm overnight, found the same day", () => Overnight(0.3));
        var large = Row("moved by 0.5 mm overnight, found the same day", () => Overnight(0.5));
        var sound = Row("sound days, refused",
            () => PassTrial.Days(_ => _ => 0, CourseDays, Runs, Seed).Sum(r => r.Count) / (double)(Runs * CourseDays));
        var creep = Row($"creep of 0.1 mm a day, found in {CourseDays} days", () => Found(PassCourses.Creep(0.1), CourseDays));
        return sound <= 0.01 && creep >= 0.9 && small >= 0.95 && large >= 0.95;

        double Row(string name, Func<double> share)
        {
            var value = share();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {value:0.0000}"));
            return value;
        }
    }

    private static double Overnight(double mm) =>
        Found(PassCourses.Overnight(mm, PassCourses.MoveDay), PassCourses.MoveDay + 1);

    private static double Found(Func<Random, Func<int, double>> moved, int days) =>
        PassTrial.Days(moved, days, Runs, Seed).Count(r => r.Count > 0 && r[^1] == days - 1) / (double)Runs;
}
