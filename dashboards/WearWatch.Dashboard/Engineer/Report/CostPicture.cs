using System.Globalization;
using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>What chains cost from month to month: the month and the twelve before it; breakdowns stand on top.</summary>
internal static class CostPicture
{
    private const int Months = 13;
    private const double BarShare = 0.6;

    private static readonly ChartFrame Frame = new(900, 250, LabelWidth: 9);

    /// <summary>The picture; null where nothing was spent.</summary>
    public static Drawing? Of(MonthFacts facts)
    {
        var months = Enumerable.Range(1 - Months, Months).Select(facts.Month.AddMonths).Select(month => (
            Name: month.ToString("MMM yy", CultureInfo.CurrentCulture),
            Costs: facts.Costs(new CostPeriod(facts.Time.StartOf(month), facts.Time.StartOf(month.AddMonths(1)))))).ToList();
        var most = months.Max(m => m.Costs.Total);
        if (most <= 0) return null;
        var up = new LinearScale(0, 1.05 * most, Frame.Bottom, Frame.Top);
        var wide = (Frame.Right - Frame.Left) / Months;
        return new Drawing(
            T["Cost from month to month"], string.Join("; ", months.Select(m => $"{m.Name}: {Amounts(m.Costs, facts.Terms)}")),
            Frame,
            [
                .. up.Ticks(4).SelectMany(Grid),
                .. months.SelectMany((m, i) => Column(m.Name, m.Costs, Frame.Left + i * wide, wide)),
                new DrawnMark.Stroke(Frame.Left, Frame.Bottom, Frame.Right, Frame.Bottom, Ink.Axis),
                new DrawnMark.Label(4, 0.95 * Frame.FontSize, facts.Terms.Costs.Money),
                .. Key(0.35, T["planned swaps"], Ink.Main), .. Key(0.6, T["breakdowns"], Ink.Apart),
            ]);

        IEnumerable<DrawnMark> Grid(double amount) =>
        [
            new DrawnMark.Stroke(Frame.Left, up.At(amount), Frame.Right, up.At(amount), Ink.Grid),
            new DrawnMark.Label(Frame.Left - 6, up.At(amount) + 4, CostWords.Figure(amount), LabelSide.Left),
        ];

        IEnumerable<DrawnMark> Column(string name, CostStatement costs, double left, double width)
        {
            var (planned, all) = (up.At(costs.Total - costs.Breakdowns), up.At(costs.Total));
            var (x, wide, said) = (left + (1 - BarShare) / 2 * width, BarShare * width, $"{name}: {Amounts(costs, facts.Terms)}");
            if (Frame.Bottom > planned) yield return new DrawnMark.Bar(x, planned, wide, Frame.Bottom - planned, Ink.Main, said);
            if (planned > all) yield return new DrawnMark.Bar(x, all, wide, planned - all, Ink.Apart, said);
            yield return new DrawnMark.Label(left + width / 2, Frame.Bottom + 1.4 * Frame.FontSize, name, LabelSide.Middle);
        }
    }

    private static IEnumerable<DrawnMark> Key(double share, string words, Ink ink)
    {
        var (x, y) = (Frame.Left + share * (Frame.Right - Frame.Left), Frame.Height - 0.4 * Frame.FontSize);
        return [new DrawnMark.Bar(x, y - 9, 12, 9, ink, words), new DrawnMark.Label(x + 18, y, words)];
    }

    private static string Amounts(CostStatement costs, CostTerms terms) => costs.Breakdowns > 0
        ? T[$"{CostWords.Money(costs.Total, terms)}, {CostWords.Figure(costs.Breakdowns)} of it by breakdowns"]
        : CostWords.Money(costs.Total, terms);
}
