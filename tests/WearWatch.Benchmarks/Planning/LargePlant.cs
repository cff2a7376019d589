using MathNet.Numerics.Distributions;
using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Planning;

/// <summary>
/// A made-up plant of 200 chains on 25 lines with a shutdown of each line in each of 26 weeks, all lines served by one crew.
/// </summary>
internal static class LargePlant
{
    /// <summary>The crew could do the work two and a half times over, but not where it is wanted most.</summary>
    private const double CrewHoursOverWork = 2.5;

    private static readonly DateTimeOffset Start = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

    public static PlanInput Of(int seed, int chains = 200, int lines = 25, int weeks = 26, double crewShare = 1)
    {
        var dice = new Random(seed);
        SwapTask[] tasks = [.. Enumerable.Range(0, chains).Select(i => Swap(dice, i, lines, weeks))];
        var hoursAWeek = crewShare * CrewHoursOverWork * tasks.Sum(t => t.CrewHours) / weeks;
        return new PlanInput
        {
            Now = Start,
            HorizonEnd = Start.AddDays(7 * weeks + 1),
            Tasks = tasks,
            Windows = [.. Enumerable.Range(1, lines).SelectMany(l => Enumerable.Range(1, weeks).Select(w => new ShutdownWindow
            {
                Id = $"L{l:00}/{w:00}", Line = $"L{l:00}", Start = Start.AddDays(7 * w), Length = TimeSpan.FromHours(8),
                Crew = "fitters", CrewHours = hoursAWeek,
            }))],
            Spares = [.. Enumerable.Range(0, 10).Select(t => new Spare
            {
                Part = Chain(t), InStock = 300 + dice.Next(400), LeadTime = TimeSpan.FromDays(7 * (6 + dice.Next(10))),
                PackSize = 160, Price = 2 + 4 * dice.NextDouble(),
                OnOrder = [new Delivery(Start.AddDays(20 + dice.Next(40)), 320)],
            })],
            Costs = new PlanningCosts { StopHours = 1.5 },
        };
    }

    private static SwapTask Swap(Random dice, int i, int lines, int weeks)
    {
        var (median, spread) = (weeks * 168 * (0.1 + 1.3 * dice.NextDouble()), 0.1 + 0.4 * dice.NextDouble());
        var pitches = 60 + dice.Next(120);
        var type = dice.Next(10);
        return new SwapTask
        {
            Chain = $"C{i:000}",
            Line = $"L{1 + i % lines:00}",
            ChainType = Chain(type).Designation,
            HoursRun = 2000 + 8000 * dice.NextDouble(),
            Left = new HoursToLimit(
                new WearForecast
                {
                    LimitPercent = 3,
                    ProbabilityPassed = 0,
                    PercentilesHours = [.. Enumerable.Range(1, 99)
                        .Select(p => median * Math.Exp(spread * Normal.InvCDF(0, 1, p / 100.0)))],
                },
                0),
            Hours = 2 + 4 * dice.NextDouble(),
            People = 1 + dice.Next(2),
            Needs = [new PartNeed(Chain(type), pitches)],
            ChainPrice = 4.0 * pitches,
            SprocketPrice = 100 + 500 * dice.NextDouble(),
        };
    }

    private static Part Chain(int type) => new(PartKind.Chain, $"type {type}");
}
