using WearWatch.Planning.Plans;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;

namespace WearWatch.Benchmarks.Years;

/// <summary>Swaps by the planner of WearWatch, from whatever odds a way tells of its chains.</summary>
internal abstract class PlannedWay : Way
{
    /// <summary>As the plant's own query: a chain is planned for when its limit falls into the horizon with these odds.</summary>
    private const double WorthPlanning = 0.05;

    private static readonly PlannerEffort effort = new(0.01, TimeSpan.FromSeconds(2));

    public override async Task DecideAsync(
        IReadOnlyList<Position> mill, IReadOnlyList<ShutdownWindow> windows, DateTimeOffset now)
    {
        var end = windows.Max(w => w.Start).AddDays(1);
        var horizonHours = Mill.Calendar.Between(now, end + Mill.Costs.NextChance).Hours;
        var tasks = mill.Select(p => (Position: p, Task: TaskOf(p)))
            .Where(t => t.Task is not null && t.Task.Left.ProbabilityPast(horizonHours) >= WorthPlanning).ToList();
        var plan = await SwapPlanner.ProposeAsync(
            new PlanInput
            {
                Now = now,
                HorizonEnd = end,
                Tasks = [.. tasks.Select(t => t.Task!)],
                Windows = windows,
                Costs = Mill.Costs,
                Calendar = Mill.Calendar,
            },
            effort);
        var placed = plan.Placements.ToDictionary(p => p.Chain, p => p.Window?.Id);
        foreach (var position in mill) position.SwapIn = placed.GetValueOrDefault(position.Name);
    }

    protected SwapTask? TaskOf(Position position) => Forecast(position) is not { } forecast ? null : new SwapTask
    {
        Chain = position.Name,
        Line = position.Line,
        Left = new HoursToLimit(forecast, position.Hours - LastHours(position)),
        HoursRun = position.Hours,
        Hours = 4,
        People = 2,
        ChainPrice = Mill.ChainPrice,
        SprocketPrice = Mill.SprocketPrice,
    };

    /// <summary>The hours from which a forecast counts.</summary>
    protected virtual double LastHours(Position position) =>
        position.Observations.Count > 0 ? position.Observations[^1].HoursSinceFitting : 0;
}
