using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>Forecasts at half of each life against what happened; lives that ended in the month or the year before.</summary>
internal static class ForecastPicture
{
    private static readonly ChartFrame Frame = new(900, 380, LabelWidth: 9);

    /// <summary>The picture; null where no life ended that had a forecast.</summary>
    public static Drawing? Of(MonthFacts facts)
    {
        var ended = facts.Record.Where(f => f.AtShare == SpreadCheck.AtShare && f.Score.Answered && f.EndedAt is { } at
            && (facts.Period.Holds(at) || facts.YearBefore.Holds(at))).Select(f => (f.Card.Name, f.Score)).ToList();
        if (ended.Count == 0) return null;
        var most = 1.1 * ended.Max(e => Math.Max(e.Score.HoursLeft, e.Score.GivenHours(50)));
        var (along, up) = (new LinearScale(0, most, Frame.Left, Frame.Right), new LinearScale(0, most, Frame.Bottom, Frame.Top));
        return new Drawing(
            T["Forecast against what happened"],
            T[$"{ended.Count(e => e.Score.Held90):#,0} of {ended.Count:#,0} within their 90 % interval"], Frame,
            [
                .. along.Ticks(5).SelectMany(Grid),
                new DrawnMark.Stroke(Frame.Left, Frame.Bottom, Frame.Right, Frame.Top, Ink.Stated),
                .. ended.Select(e => Interval(e.Score)), .. ended.Select(e => Dot(e.Name, e.Score)),
                new DrawnMark.Stroke(Frame.Left, Frame.Bottom, Frame.Right, Frame.Bottom, Ink.Axis),
                new DrawnMark.Label(4, 0.95 * Frame.FontSize, T["hours left, as it turned out"]),
                new DrawnMark.Label(
                    (Frame.Left + Frame.Right) / 2, Frame.Height - 0.4 * Frame.FontSize,
                    T["hours left by the forecast at half of life"], LabelSide.Middle),
            ]);

        IEnumerable<DrawnMark> Grid(double hours) =>
        [
            new DrawnMark.Stroke(Frame.Left, up.At(hours), Frame.Right, up.At(hours), Ink.Grid),
            new DrawnMark.Stroke(along.At(hours), Frame.Top, along.At(hours), Frame.Bottom, Ink.Grid),
            new DrawnMark.Label(Frame.Left - 6, up.At(hours) + 4, Show.Count((int)hours), LabelSide.Left),
            new DrawnMark.Label(
                along.At(hours), Frame.Bottom + 1.4 * Frame.FontSize, Show.Count((int)hours), LabelSide.Middle),
        ];

        // An interval that has no end, or one beyond the picture, ends with the picture.
        DrawnMark Interval(ScoredForecast score) => new DrawnMark.Stroke(
            along.At(Math.Min(score.GivenHours(5), most)), up.At(score.HoursLeft), along.At(Math.Min(score.GivenHours(95), most)),
            up.At(score.HoursLeft), InkOf(score));

        DrawnMark Dot(string name, ScoredForecast score) => new DrawnMark.Point(
            along.At(score.GivenHours(50)), up.At(score.HoursLeft), InkOf(score), Said(name, score));
    }

    private static Ink InkOf(ScoredForecast score) => score.Held90 ? Ink.Main : Ink.Apart;

    private static string Said(string name, ScoredForecast score) =>
        T[$"{name}: forecast {score.GivenHours(50):#,0} h, happened {score.HoursLeft:#,0} h"];
}
