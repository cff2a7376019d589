using System.Text;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>Where everything of the survival picture lies, in pixels. The component only draws it.</summary>
public sealed class SurvivalPlan
{
    /// <summary>More marks than this run together; then every so-manieth is drawn.</summary>
    private const int MostMarks = 150;

    public SurvivalPlan(IReadOnlyList<GroupOfLives> groups, ChartFrame frame)
    {
        Frame = frame;
        var last = groups.SelectMany(g => g.Curve.Steps.TakeLast(1)).Select(s => s.Hours).DefaultIfEmpty(1000).Max();
        Hours = new LinearScale(0, last * 1.03, frame.Left, frame.Right);
        Share = new LinearScale(0, 1, frame.Bottom, frame.Top);
        Traces = [.. groups.Select(g => Trace(g, withBand: groups.Count <= 2))];
    }

    public ChartFrame Frame { get; }

    public LinearScale Hours { get; }

    public LinearScale Share { get; }

    public IReadOnlyList<SurvivalTrace> Traces { get; }

    private SurvivalTrace Trace(GroupOfLives group, bool withBand)
    {
        var steps = group.Curve.Steps;
        var suspended = steps.Where(s => s.Suspended > 0).ToList();
        var every = Math.Max(1, suspended.Count / MostMarks);
        return new SurvivalTrace(
            group.Name,
            Stairs(steps.Select(s => (s.Hours, s.Surviving)), start: 1),
            withBand ? Band(group.Curve) : "",
            string.Concat(suspended.Where((_, i) => i % every == 0)
                .Select(s => $"M{N(Hours.At(s.Hours))} {N(Share.At(s.Surviving) - 4)}v8")),
            T[$"{LifeGroupings.Said(group.Name)}: {GroupTable.Failures(group.Failures)} of {group.Lives.Count:#,0}, "
                + $"{Median(group)}"]);
    }

    private static Phrase Median(GroupOfLives group) =>
        group.Curve.MedianHours is { } hours ? Phrase.Of($"half fail by {hours:#,0} h") : $"fewer than half have failed";

    // There and back: the upper stairs forwards, the lower ones backwards.
    private string Band(SurvivalCurve curve)
    {
        var band = curve.Steps.Zip(curve.Band(BandKind.LogLog, GroupOfLives.Confidence)).Where(b => !double.IsNaN(b.Second.Low))
            .ToList();
        if (band.Count == 0) return "";
        var path = new StringBuilder(Stairs(band.Select(b => (b.First.Hours, b.Second.High)), start: 1));
        for (var i = band.Count - 1; i >= 0; i--)
        {
            path.Append($"V{N(Share.At(band[i].Second.Low))}H{N(Hours.At(band[i].First.Hours))}");
        }

        return path.Append($"V{N(Share.At(1))}Z").ToString();
    }

    private string Stairs(IEnumerable<(double Hours, double Share)> steps, double start)
    {
        var path = new StringBuilder($"M{N(Hours.At(0))} {N(Share.At(start))}");
        var level = start;
        foreach (var (hours, share) in steps)
        {
            path.Append($"H{N(Hours.At(hours))}");
            if (share != level) path.Append($"V{N(Share.At(share))}");
            level = share;
        }

        return path.ToString();
    }

    private static string N(double value) => Show.Coordinate(value);
}
