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

    private static bool RunCourses(TextWriter output)
    {
        var sound = PassTrial.Days(_ => _ => 0, CourseDays, Runs, Seed).Sum(r => r.Count) / (double)(Runs * CourseDays);
        var creep = Found(PassCourses.Creep(0.1), CourseDays);
        var (small, large) = (Overnight(0.3), Overnight(0.5));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"sound days, refused {sound:0.0000}; creep of 0.1 mm a day found in {CourseDays} days {creep:0.000}; "
            + $"moved overnight by 0.3 mm found the same day {small:0.000}, by 0.5 mm {large:0.000}"));
        return sound <= 0.01 && creep >= 0.9 && small >= 0.95 && large >= 0.95;
    }

    private static double Overnight(double mm) =>
        Found(PassCourses.Overnight(mm, PassCourses.MoveDay), PassCourses.MoveDay + 1);

    private static double Found(Func<Random, Func<int, double>> moved, int days) =>
        PassTrial.Days(moved, days, Runs, Seed).Count(r => r.Count > 0 && r[^1] == days - 1) / (double)Runs;
}
