using System.Globalization;

namespace WearWatch.Benchmarks.Passes;

/// <summary>200 days of each kind at two sensors, sound and faulty; the bars of docs/signals.md.</summary>
internal static class PassBenchmark
{
    private const int Days = 200;
    private const int Seed = 1000;

    /// <summary>Prints what became of them; whether all bars are kept.</summary>
    public static bool Run(TextWriter output)
    {
        var runs = Environment.GetEnvironmentVariable("PASS_DAYS") is { } asked ? int.Parse(asked, CultureInfo.InvariantCulture) : Days;
        var kept = true;
        output.WriteLine("scenario | asked | reached | kept | wrong | covered | within 0.02 | mean u % | refused");
        foreach (var scenario in PassScenarios.All)
        {
            var score = PassTrial.Of(scenario, runs, Seed);
            var good = score.Reached(scenario.Asked) >= scenario.Bar * runs && (score.Wrong == 0 || scenario.Asked == PassAsked.Refused);
            kept &= good;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{scenario.Name} | {scenario.Asked} {scenario.Bar:0.##} | {(double)score.Reached(scenario.Asked) / runs:0.000}")
                + string.Create(CultureInfo.InvariantCulture,
                $"{(good ? "" : " MISSED")} | {score.Kept} | {score.Wrong} | {score.Covered} | {score.Near} | ")
                + string.Create(CultureInfo.InvariantCulture,
                $"{score.Uncertainty / Math.Max(1, score.Kept + score.Wrong):0.0000} | ")
                + string.Join(", ", score.Refused.Select(r => $"{r.Key} {r.Value}")));
        }

        return kept;
    }
}
