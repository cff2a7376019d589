using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>
/// Where everything on probability paper lies: ln hours along, the law's height up, so that its lives lie on a line.
/// </summary>
public sealed class PaperPlan
{
    private const int MostPoints = 250;

    private static readonly double[] Shares = [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 0.99, 0.999];
    private static readonly double[] BandShares = [0.01, 0.1, 0.5, 0.9, 0.99];

    private readonly LifeLaw law;

    public PaperPlan(IReadOnlyList<GroupOfLives> groups, LifeLaw law, ChartFrame frame)
    {
        (this.law, Frame) = (law, frame);
        var points = groups.ToDictionary(g => g, g => PlottedLife.Of(g.Lives));
        var all = points.Values.SelectMany(p => p).ToList();
        var lowest = Math.Min(0.01, all.Select(p => p.ShareFailed).DefaultIfEmpty(1).Min());
        var highest = Math.Max(0.99, all.Select(p => p.ShareFailed).DefaultIfEmpty(0).Max());
        Height = new LinearScale(law.Height(lowest) - 0.1, law.Height(highest) + 0.1, frame.Bottom, frame.Top);
        // From the first failure or where the lines begin, to the longest life seen; a flat line would go on for decades of both.
        var longest = groups.SelectMany(g => g.Lives).Select(l => l.Hours).DefaultIfEmpty(1000).Max();
        var from = all.Select(p => p.Hours).Concat(groups.Select(g => g.Fit?.HoursAt(0.01)).OfType<double>())
            .DefaultIfEmpty(longest / 10).Min();
        LogHours = new LinearScale(
            Math.Log(Math.Max(from, longest / 300) * 0.9), Math.Log(longest * 1.1), frame.Left, frame.Right);
        ShareTicks = [.. Shares.Where(s => law.Height(s) >= Height.From && law.Height(s) <= Height.To)];
        HourTicks = [.. Decades()];
        Traces = [.. groups.Select(g => Trace(g, points[g], withBand: groups.Count == 1))];
    }

    public ChartFrame Frame { get; }

    public LinearScale LogHours { get; }

    public LinearScale Height { get; }

    public IReadOnlyList<double> ShareTicks { get; }

    public IReadOnlyList<(double Hours, bool Labelled)> HourTicks { get; }

    public IReadOnlyList<PaperTrace> Traces { get; }

    public double X(double hours) => LogHours.At(Math.Log(hours));

    public double Y(double share) => Height.At(law.Height(share));

    private PaperTrace Trace(GroupOfLives group, IReadOnlyList<PlottedLife> points, bool withBand)
    {
        var every = Math.Max(1, points.Count / MostPoints);
        var line = group.Fit is { } fit ? $"M{Point(fit, Height.From)}L{Point(fit, Height.To)}" : "";
        return new PaperTrace(group.Name, [.. points.Where((_, i) => i % every == 0)], line, withBand && group.Fit is { } one
            ? Band(one)
            : "");
    }

    private string Point(LifeFit fit, double height) => $"{N(X(fit.HoursAt(law.ShareFailed(height))))} {N(Height.At(height))}";

    private string Band(LifeFit fit)
    {
        var ends = BandShares.Where(s => law.Height(s) >= Height.From && law.Height(s) <= Height.To)
            .Select(s => (Share: s, Interval: fit.HoursInterval(s, GroupOfLives.Confidence))).ToList();
        var there = ends.Select(e => $"{N(X(e.Interval.Low))} {N(Y(e.Share))}");
        var back = ends.AsEnumerable().Reverse().Select(e => $"{N(X(e.Interval.High))} {N(Y(e.Share))}");
        return "M" + string.Join("L", there.Concat(back)) + "Z";
    }

    // 1 to 9 of every decade in sight; a label on 1, 2 and 5, and on all when only one decade or less is seen.
    private IEnumerable<(double Hours, bool Labelled)> Decades()
    {
        var (from, to) = (Math.Exp(LogHours.From), Math.Exp(LogHours.To));
        for (var decade = Math.Pow(10, Math.Floor(Math.Log10(from))); decade <= to; decade *= 10)
            for (var digit = 1; digit <= 9; digit++)
                if (decade * digit >= from && decade * digit <= to) yield return (decade * digit, digit is 1 or 2 or 5);
    }

    private static string N(double value) => Show.Coordinate(value);
}
