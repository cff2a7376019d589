using System.Globalization;
using System.Text;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>
/// Where everything lies in the picture of how a forecast moved: across the reading, up the hours at which the limit is reached.
/// </summary>
public sealed class TrailPlan
{
    private const double Left = 58, Right = 628, Top = 18, Bottom = 218;

    /// <summary>The first late ends lie far out and would flatten the rest: so much above the highest middle is shown.</summary>
    private const double Headroom = 1.35;

    private readonly IReadOnlyList<ForecastStep> steps;

    public TrailPlan(IReadOnlyList<ForecastStep> steps)
    {
        this.steps = [.. steps.Where(s => s is { EarlyAtHours: not null, MiddleAtHours: not null })];
        var read = this.steps.Select(s => s.Observation.HoursSinceFitting).DefaultIfEmpty(0).ToList();
        var highest = this.steps.Skip(this.steps.Count / 3).Select(s => s.MiddleAtHours!.Value).DefaultIfEmpty(1).Max();
        Across = new LinearScale(read[0], Math.Max(read[^1], read[0] + 1), Left, Right);
        Up = new LinearScale(Math.Min(read[0], this.steps.Select(s => s.EarlyAtHours!.Value).DefaultIfEmpty(0).Min()),
            Math.Max(Headroom * highest, 1), Bottom, Top);
    }

    public LinearScale Across { get; }

    public LinearScale Up { get; }

    /// <summary>Whether there is enough to draw.</summary>
    public bool IsDrawn => steps.Count > 1;

    /// <summary>From the early to the late end; a late end out of sight runs off the top.</summary>
    public string Band => IsDrawn
        ? Path([.. steps.Select(s => (X(s), Up.At(s.EarlyAtHours!.Value))),
            .. steps.Reverse().Select(s => (X(s), Up.At(s.LateAtHours ?? 2 * Up.To)))]) + "Z"
        : "";

    public string Middle => Path([.. steps.Select(s => (X(s), Up.At(s.MiddleAtHours!.Value)))]);

    /// <summary>The readings themselves: where this meets the band, the limit has been reached.</summary>
    public string Reading => IsDrawn
        ? Path([.. new[] { Across.From, Across.To }.Select(h => (Across.At(h), Up.At(h)))])
        : "";

    private double X(ForecastStep step) => Across.At(step.Observation.HoursSinceFitting);

    private static string Path(IReadOnlyList<(double X, double Y)> points)
    {
        var path = new StringBuilder();
        foreach (var (x, y) in points) path.Append(
            CultureInfo.InvariantCulture, $"{(path.Length == 0 ? 'M' : 'L')}{x:0.#} {y:0.#}");
        return path.ToString();
    }
}
