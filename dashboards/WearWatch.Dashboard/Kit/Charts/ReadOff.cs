namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>What a wear chart says at a running hour: what was believed, or from the last reading on the forecast.</summary>
/// <param name="Hours">The hour.</param>
/// <param name="Percent">Elongation believed, or the median of the forecast.</param>
/// <param name="LowPercent">What 95 of 100 such chains have passed by then; null for the past.</param>
/// <param name="HighPercent">What 5 of 100 have passed by then; null for the past.</param>
public sealed record ReadOff(double Hours, double Percent, double? LowPercent, double? HighPercent)
{
    /// <summary>Reads a picture; null where it says nothing.</summary>
    public static ReadOff? Of(WearPicture picture, double hours)
    {
        var track = picture.Track.Select(t => (t.Hours, t.Percent)).ToList();
        if (track.Count > 0 && hours <= track[^1].Hours)
            return Between(track, hours) is { } believed ? new(hours, believed, null, null) : null;
        return Along(picture, l => l.MiddleH, hours) is { } middle
            ? new(hours, middle, Along(picture, l => l.LateH, hours), Along(picture, l => l.EarlyH, hours))
            : null;
    }

    private static double? Along(WearPicture picture, Func<PictureLevel, double> at, double hours) =>
        Between([.. picture.Levels.Where(l => double.IsFinite(at(l))).Select(l => (at(l), l.Percent))], hours);

    private static double? Between(List<(double Hours, double Percent)> points, double hours)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (hours < a.Hours || hours > b.Hours) continue;
            return b.Hours > a.Hours ? a.Percent + (hours - a.Hours) / (b.Hours - a.Hours) * (b.Percent - a.Percent) : b.Percent;
        }

        return null;
    }
}
