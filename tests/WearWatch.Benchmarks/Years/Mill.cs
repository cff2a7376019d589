using WearWatch.Planning.Costs;
using WearWatch.Planning.Windows;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Years;

/// <summary>A mill of forty chains that lives ten years in simulated time, run in one way.</summary>
/// <remarks>
/// Eight lines run 100 h a week; each stands every other Saturday for eight hours with a crew for two swaps. Money as the
/// defaults of <see cref="PlanningCosts"/>; a new chain with its fitting, sprockets run past the limit, and the quarter of an
/// hour of a reading are assumed.
/// </remarks>
internal sealed class Mill
{
    public const double ChainPrice = 1200;
    public const double SprocketPrice = 400;
    public const double ReadingPrice = 15;
    public const int Weeks = 520;
    public const int PlanEveryWeeks = 4;
    public const int HorizonWeeks = 12;

    private const int Lines = 8;
    private const int PositionsOnLine = 5;
    private const double WeekHours = 100;
    private const int WeeksOfYear = 52;

    private readonly YearsWorld world;
    private readonly int seed;
    private readonly Way way;
    private readonly Ledger ledger = new();
    private readonly List<FittedChain> gone = [];
    private readonly Position[] positions;

    private Mill(YearsWorld world, int seed, Way way)
    {
        (this.world, this.seed, this.way) = (world, seed, way);
        positions = [.. Enumerable.Range(0, Lines * PositionsOnLine).Select(i =>
        {
            var life = LifeOf(i, 0, 0);
            // First ages spread evenly over the first two thirds of a life: 7 has no factor in common with the 40 positions.
            var run = Math.Round(i * 7 % 40 / 60.0 * life.ReachesLimitAt / 10) * 10;
            return new Position(i, $"L{i / PositionsOnLine}", life, run);
        })];
    }

    public static PlanningCosts Costs { get; } = new();

    public static ProductionCalendar Calendar { get; } = new(
        [.. new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday }
            .Select(day => new Shift(day, default, TimeSpan.FromHours(WeekHours / 5)))]);

    private static DateTimeOffset Begin { get; } = new(2030, 1, 7, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Runs a mill for ten years.</summary>
    public static async Task<Ledger> RunAsync(YearsWorld world, int seed, Way way)
    {
        var mill = new Mill(world, seed, way);
        for (var week = 0; week < Weeks; week++) await mill.LiveAsync(week);
        return mill.ledger;
    }

    /// <summary>The shutdowns of all lines that begin within so many weeks from a Monday.</summary>
    public static IReadOnlyList<ShutdownWindow> Windows(DateTimeOffset monday, int weeks) =>
        [.. from week in Enumerable.Range(0, weeks)
            from line in Enumerable.Range(0, Lines)
            let start = monday.AddDays(7 * week + 5).AddHours(8)
            where ((int)Math.Round((start - Begin).TotalDays / 7) + line) % 2 == 0
            select new ShutdownWindow
            {
                Id = FormattableString.Invariant($"L{line} {start:yyyy-MM-dd}"), Line = $"L{line}", Start = start,
                Length = TimeSpan.FromHours(8), CrewHours = 16,
            }];

    private async Task LiveAsync(int week)
    {
        var monday = Begin.AddDays(7 * week);
        if (week % WeeksOfYear == 0) way.Learn([.. gone, .. positions.Select(p => p.Known(removed: false))]);
        foreach (var position in positions.Where(p => way.Measures(p, monday)))
        {
            position.Measure(monday);
            ledger.Measured(ReadingPrice);
        }

        if (week % PlanEveryWeeks == 0)
        {
            foreach (var position in positions) Judge(position);
            await way.DecideAsync(positions, Windows(monday, HorizonWeeks), monday);
        }

        foreach (var position in positions) Run(position, week);
        foreach (var window in Windows(monday, 1))
        {
            var swapped = positions.Where(p => p.SwapIn == window.Id).ToList();
            foreach (var position in swapped) Swap(position, week, broken: false);
            if (swapped.Count > 0) ledger.Pay(Costs.StopOf(window.Line));
        }
    }

    private void Run(Position position, int week)
    {
        for (var left = WeekHours; left > 0;)
        {
            var toFailure = position.Life.FailsAt - position.Hours;
            position.Run(Math.Min(left, Math.Max(toFailure, 0)));
            left -= toFailure;
            if (left < 0) return;
            ledger.Pay(Costs.BreakdownOf(position.Line));
            Swap(position, week, broken: true);
        }
    }

    private void Swap(Position position, int week, bool broken)
    {
        ledger.Swapped(position.Hours, position.Life.ReachesLimitAt, broken);
        ledger.Pay(ChainPrice + (position.Hours > position.Life.ReachesLimitAt ? SprocketPrice : 0));
        gone.Add(position.Swap(LifeOf(position.Index, position.Fitted + 1, (double)week / WeeksOfYear)));
    }

    /// <summary>Holds the forecast that stands against the truth, which nobody in the mill knows.</summary>
    private void Judge(Position position)
    {
        if (position.Observations.Count == 0 || position.Hours >= position.Life.ReachesLimitAt
            || way.Forecast(position) is not { } forecast) return;
        var left = position.Life.ReachesLimitAt - position.Observations[^1].HoursSinceFitting;
        ledger.Forecasted(left >= (forecast.EarlyHours ?? 0) && left <= (forecast.LateHours ?? double.PositiveInfinity));
    }

    private TrueLife LifeOf(int position, int nth, double year) =>
        new(world, seed, position, nth, year, Costs.MeanHoursToFailurePastLimit);
}
