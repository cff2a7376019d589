namespace WearWatch.Wear;

/// <summary>
/// How long one chain took for each step of elongation, as its readings tell: what a plant's curve is learned from.
/// </summary>
/// <remarks>
/// The steady readings, a new chain's start before them, are brought into rising order by pooling neighbours that contradict it
/// (isotonic regression: Barlow and others, Statistical Inference under Order Restrictions, 1972, from memory), and the hours at
/// each step's ends lie on the line between. Steps that the readings do not span are not told: a chain that was taken off early,
/// or still runs, tells of the steps that it has made.
/// </remarks>
public sealed class StepHours
{
    /// <summary>Elongation at which the first step begins, in percent: where a new chain's steady wear starts.</summary>
    public const double FromPercent = 0.25;

    /// <summary>Length of a step, in percent.</summary>
    public const double StepPercent = 0.25;

    /// <summary>Steps up to where no chain runs.</summary>
    public const int Steps = 24;

    private readonly List<(double ThousandHours, double Percent, double Weight)> path;

    private StepHours(
        List<(double ThousandHours, double Percent, double Weight)> path, double meanLogRate,
        IReadOnlyList<(double ThousandHours, double Percent)> steady) =>
        (this.path, MeanLogRate, Steady, Logs) = (path, meanLogRate, steady, [
            .. Enumerable.Range(0, Steps).Select(k => FromPercent + k * StepPercent)
                .Select(from => Math.Log(HoursTo(path, from + StepPercent) - HoursTo(path, from)))]);

    /// <summary>ln of the thousands of hours of each step; not a number where it is not told.</summary>
    public double[] Logs { get; }

    /// <summary>ln of the wear rate that was expected of the chain.</summary>
    public double MeanLogRate { get; }

    /// <summary>Its steady readings.</summary>
    public IReadOnlyList<(double ThousandHours, double Percent)> Steady { get; }

    /// <summary>
    /// The thousands of hours at which it reached an elongation; not a number where its readings do not span it.
    /// </summary>
    public double ThousandHoursTo(double percent) => HoursTo(path, percent);

    /// <summary>What a chain tells.</summary>
    public static StepHours Of(TellingChain chain, WearConstants constants)
    {
        var steady = chain.Chain.Observations
            .Select(o => (
                ThousandHours: o.HoursSinceFitting / 1000, Percent: SteadyReading.PercentOf(o, constants),
                Scatter: o.ScatterPercent))
            .ToList();
        var path = Rising([
            (0, WearPrior.Broad.MeanStartPercent, Weight(WearPrior.Broad.StandardDeviationStartPercent)),
            .. steady.Select(s => (s.ThousandHours, s.Percent, Weight(s.Scatter))),
        ]);
        return new(path, chain.Prior.MeanLogRate, [.. steady.Select(s => (s.ThousandHours, s.Percent))]);
    }

    private static double Weight(double deviation) => 1 / (deviation * deviation);

    /// <summary>Points that contradict the order pooled into one at their weighed middle, until all rise.</summary>
    private static List<(double ThousandHours, double Percent, double Weight)> Rising(
        IEnumerable<(double ThousandHours, double Percent, double Weight)> points)
    {
        var path = new List<(double ThousandHours, double Percent, double Weight)>();
        foreach (var point in points)
        {
            var last = point;
            while (path.Count > 0 && (path[^1].Percent >= last.Percent || path[^1].ThousandHours >= last.ThousandHours))
            {
                var (before, weight) = (path[^1], path[^1].Weight + last.Weight);
                last = (
                    (before.Weight * before.ThousandHours + last.Weight * last.ThousandHours) / weight,
                    (before.Weight * before.Percent + last.Weight * last.Percent) / weight, weight);
                path.RemoveAt(path.Count - 1);
            }

            path.Add(last);
        }

        return path;
    }

    private static double HoursTo(List<(double ThousandHours, double Percent, double Weight)> path, double percent)
    {
        // The start is where a chain's wear is put to begin with: the first step counts from the first point.
        if (percent <= path[0].Percent && percent <= FromPercent) return path[0].ThousandHours;
        for (var i = 1; i < path.Count; i++)
        {
            if (percent > path[i].Percent || percent < path[i - 1].Percent) continue;
            var (low, high) = (path[i - 1], path[i]);
            var share = (percent - low.Percent) / (high.Percent - low.Percent);
            return low.ThousandHours + share * (high.ThousandHours - low.ThousandHours);
        }

        return double.NaN;
    }
}
