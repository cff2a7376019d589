
using WearWatch.Dashboard.Kit.Words;

namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>Where everything of a chain's wear chart lies, in pixels. The component only draws it.</summary>
public sealed class WearChartPlan
{
    /// <summary>The picture reaches this far past the middle of the forecast, so that the early end is not squeezed.</summary>
    private const double PastMiddle = 1.35;

    public WearChartPlan(WearPicture picture, double width, double height, double fontSize, ChartStretch? stretch = null)
    {
        (Picture, Width, Height, FontSize) = (picture, width, height, fontSize);
        Left = 3.4 * fontSize;
        Bottom = height - 3.2 * fontSize;
        Right = width - 0.8 * fontSize;
        Top = 1.4 * fontSize;
        var from = Math.Min(stretch?.FromHours ?? 0, LastHour(picture) - 1);
        Hours = new LinearScale(from, Math.Max(stretch?.ToHours ?? LastHour(picture), from + 1), Left, Right);
        var (low, high) = stretch is { IsPart: true } ? PartEnds(picture, Hours) : PercentEnds(picture);
        Percent = new LinearScale(low, high, Bottom, Top);
    }

    public WearPicture Picture { get; }

    public double Width { get; }

    public double Height { get; }

    public double FontSize { get; }

    public double Left { get; }

    public double Right { get; }

    public double Top { get; }

    public double Bottom { get; }

    /// <summary>Running hours along.</summary>
    public LinearScale Hours { get; }

    /// <summary>Elongation up.</summary>
    public LinearScale Percent { get; }

    public double LimitY => Percent.At(Picture.LimitPercent);

    public double NowX => Hours.At(Picture.NowH);

    /// <summary>Where the planned swap stands; null when none is planned, or far beyond the picture.</summary>
    public double? SwapX => Picture.SwapH is { } hours && hours <= Hours.To ? Hours.At(hours) : null;

    /// <summary>The band that holds 90 of 100 such chains.</summary>
    public string OuterBand => Band(l => l.EarlyH, l => l.LateH);

    /// <summary>The band that holds half of such chains.</summary>
    public string InnerBand => Band(l => l.QuarterH, l => l.ThreeQuartersH);

    /// <summary>The middle of the forecast.</summary>
    public string MiddleLine => Line(Picture.Levels.Where(l => double.IsFinite(l.MiddleH)).Select(l => (l.MiddleH, l.Percent)));

    /// <summary>What was believed after each reading.</summary>
    public string TrackLine => Line(Picture.Track.Select(t => (t.Hours, t.Percent)));

    /// <summary>Where the limit line is crossed early, in the middle and late, as far as it lies in the picture.</summary>
    public IReadOnlyList<(double X, Phrase Name, string? Date)> Crossings => Picture.Levels.Count == 0
        ? []
        : [.. new[]
            {
                (H: Picture.Levels[^1].EarlyH, Name: Phrase.Of($"early"), Date: Picture.Dates.Early),
                (H: Picture.Levels[^1].MiddleH, Name: Phrase.Of($"middle"), Date: Picture.Dates.Middle),
                (H: Picture.Levels[^1].LateH, Name: Phrase.Of($"late"), Date: Picture.Dates.Late),
            }.Where(c => c.H <= Hours.To).Select(c => (Hours.At(c.H), c.Name, c.Date))];

    private static double LastHour(WearPicture picture)
    {
        var seen = picture.Readings.Select(r => r.Hours).Append(picture.NowH).Max();
        var limit = picture.Levels.Count > 0 ? picture.Levels[^1] : null;
        var ahead = limit switch
        {
            { MiddleH: var m, LateH: var l } when double.IsFinite(m) =>
                Math.Min(double.IsFinite(l) ? l * 1.04 : double.MaxValue, m * PastMiddle),
            { EarlyH: var e } when double.IsFinite(e) => e * PastMiddle,
            _ => 0,
        };
        // A limit far beyond what was seen would squeeze the readings into a corner: four times the past is enough of the future.
        return Math.Max(100, Math.Max(seen * 1.08, Math.Min(ahead, Math.Max(seen * 4, 2000))));
    }

    private static (double Low, double High) PercentEnds(WearPicture picture)
    {
        var low = picture.Readings.Where(r => !r.Doubtful).Select(r => r.Percent - r.ErrorPercent).Append(0).Min();
        var high = picture.Readings.Where(r => !r.Doubtful).Select(r => r.Percent + r.ErrorPercent).Append(picture.LimitPercent)
            .Max();
        return (Math.Max(low, -0.6), high + 0.08 * (high - low));
    }

    /// <summary>What a part shows, a little beyond it: readings, what was believed, and the median ahead.</summary>
    private static (double Low, double High) PartEnds(WearPicture picture, LinearScale hours)
    {
        bool IsIn(double h) => h >= hours.From && h <= hours.To;
        double[] seen =
        [
            .. picture.Readings.Where(r => IsIn(r.Hours) && !r.Doubtful)
                .SelectMany(r => new[] { r.Percent - r.ErrorPercent, r.Percent + r.ErrorPercent }),
            .. new[] { hours.From, (hours.From + hours.To) / 2, hours.To }
                .Select(h => ReadOff.Of(picture, h)?.Percent).OfType<double>(),
        ];
        if (seen.Length == 0) return PercentEnds(picture);
        var room = Math.Max(0.05, 0.1 * (seen.Max() - seen.Min()));
        return (seen.Min() - room, seen.Max() + room);
    }

    private string Band(Func<PictureLevel, double> early, Func<PictureLevel, double> late)
    {
        // What has no end, or lies beyond the edge, is drawn well past the edge; the clip cuts it.
        double Ahead(double hours) => Math.Min(hours, 3 * Hours.To);
        return Picture.Levels.Count == 0
            ? ""
            : Area([
                .. Picture.Levels.Select(l => (Ahead(early(l)), l.Percent)),
                .. Picture.Levels.Reverse().Select(l => (Ahead(late(l)), l.Percent))]);
    }

    private string Area(IReadOnlyList<(double Hours, double Percent)> points) => points.Count == 0 ? "" : Line(points) + "Z";

    private string Line(IEnumerable<(double Hours, double Percent)> points)
    {
        var text = string.Join(
            "L", points.Select(p => $"{Show.Coordinate(Hours.At(p.Hours))} {Show.Coordinate(Percent.At(p.Percent))}"));
        return text.Length == 0 ? "" : "M" + text;
    }
}
