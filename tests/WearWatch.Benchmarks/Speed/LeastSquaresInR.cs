using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using WearWatch.Learning;

namespace WearWatch.Benchmarks.Speed;

/// <summary>The same lines by R's <c>lm</c> in a loop, if R is installed.</summary>
/// <param name="Lm">Time of the loop over <c>lm</c>.</param>
/// <param name="BareEngine">Time of the loop over <c>.lm.fit</c>, without formula, frame and object.</param>
/// <param name="Slopes">Its slopes by chain.</param>
internal sealed record LeastSquaresInR(TimeSpan Lm, TimeSpan BareEngine, IReadOnlyDictionary<string, double> Slopes)
{
    /// <summary>Runs R; null when it is not installed.</summary>
    public static LeastSquaresInR? Run(FleetChain[] chains)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-benchmark");
        try
        {
            var (data, answers) = (Path.Combine(folder.FullName, "readings.csv"), Path.Combine(folder.FullName, "lines.csv"));
            File.WriteAllLines(data,
            [
                "chain,hours,elongation",
                .. chains.SelectMany(c => c.Observations.Select(o =>
                    string.Create(
                        CultureInfo.InvariantCulture, $"{c.Card.Name},{o.HoursSinceFitting:R},{o.ElongationPercent:R}")))
            ]);
            var start = new ProcessStartInfo(
                "Rscript", [Path.Combine(AppContext.BaseDirectory, "Speed", "least-squares.R"), data, answers])
            {
                RedirectStandardOutput = true,
            };
            using var r = Process.Start(start) ?? throw new InvalidOperationException("Rscript did not start.");
            var seconds = r.StandardOutput.ReadToEnd().Split(' ').Select(s => double.Parse(s, CultureInfo.InvariantCulture))
                .ToArray();
            r.WaitForExit();
            var slopes = File.ReadLines(answers).Select(l => l.Split(','))
                .ToDictionary(c => c[0], c => double.Parse(c[1], CultureInfo.InvariantCulture));
            return new LeastSquaresInR(TimeSpan.FromSeconds(seconds[0]), TimeSpan.FromSeconds(seconds[1]), slopes);
        }
        catch (Win32Exception)
        {
            return null; // there is no Rscript
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
