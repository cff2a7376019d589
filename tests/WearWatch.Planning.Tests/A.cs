using MathNet.Numerics.Distributions;
using WearWatch.Planning.Costs;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Planning.Windows;
using WearWatch.Wear;

namespace WearWatch.Planning.Tests;

/// <summary>Test data with defaults, so that a test states only what it is about.</summary>
internal static class A
{
    public static readonly DateTimeOffset Monday = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

    /// <summary>Hours to the limit that are lognormal: a median and the standard deviation of their logarithm.</summary>
    public static WearForecast Forecast(double median = 1000, double spread = 0.3) => new()
    {
        LimitPercent = 3,
        ProbabilityPassed = 0,
        PercentilesHours = [.. Enumerable.Range(1, 99).Select(p => median * Math.Exp(spread * Normal.InvCDF(0, 1, p / 100.0)))],
    };

    /// <summary>Hours to the limit that are known exactly.</summary>
    public static WearForecast Certain(double hours) =>
        new() { LimitPercent = 3, ProbabilityPassed = hours <= 0 ? 1 : 0, PercentilesHours = [.. Enumerable.Repeat(hours, 99)] };

    public static SwapTask Swap(
        string chain = "C1", string line = "L1", double median = 1000, double spread = 0.3, double hours = 2, int people = 1,
        double price = 300, double sprockets = 150, string group = "", IReadOnlyList<PartNeed>? needs = null,
        WearForecast? forecast = null, double? outOfUseByDay = null) => new()
        {
            Chain = chain,
            Line = line,
            ChainType = "16B-1",
            Left = new HoursToLimit(forecast ?? Forecast(median, spread), 0),
            HoursRun = 4000,
            Hours = hours,
            People = people,
            ChainPrice = price,
            SprocketPrice = sprockets,
            ParallelGroup = group,
            Needs = needs ?? [],
            OutOfUseBy = outOfUseByDay is { } day ? Monday.AddDays(day) : null,
        };

    /// <summary>A shutdown so many days after the Monday on which every plan here is made.</summary>
    public static ShutdownWindow Window(
        double day, string line = "L1", double crewHours = 16, double length = 8, string crew = "") => new()
        {
            Id = FormattableString.Invariant($"{line}/{day:00}"),
            Line = line,
            Start = Monday.AddDays(day),
            Length = TimeSpan.FromHours(length),
            Crew = crew,
            CrewHours = crewHours,
        };

    public static PlanInput Input(IReadOnlyList<SwapTask> swaps, IReadOnlyList<ShutdownWindow> windows, int days = 84) =>
        new() { Now = Monday, HorizonEnd = Monday.AddDays(days), Tasks = swaps, Windows = windows };

    public static PlannerEffort ToTheEnd { get; } = new(0, TimeSpan.FromMinutes(5));

    public static Part Chain16B { get; } = new(PartKind.Chain, "16B-1");

    /// <summary>A small plant drawn from a seed, tight enough that crews, parts and stops all matter.</summary>
    public static PlanInput SmallPlant(int seed, int chains = 6, int lines = 2, int windows = 3)
    {
        var dice = new Random(seed);
        SwapTask[] swaps = [.. Enumerable.Range(1, chains).Select(i => Swap(
            $"C{i}", $"L{1 + i % lines}", 150 + 1500 * dice.NextDouble(), 0.1 + 0.5 * dice.NextDouble(),
            1 + 4 * dice.NextDouble(),
            1 + dice.Next(2), 100 + 700 * dice.NextDouble(), 300 * dice.NextDouble(), i <= 2 && seed % 2 == 0 ? "" : i == 3
                || i == 3 + lines ? "pair" : "",
            [new PartNeed(Chain16B, 60 + dice.Next(80))]))];
        return Input(swaps, [.. Enumerable.Range(1, lines).SelectMany(l => Enumerable.Range(1, windows)
            .Select(w => Window(14 * w, $"L{l}", 4 + 4 * dice.NextDouble(), 4, "fitters")))], 14 * windows + 7) with
        {
            Spares = [new Spare
            {
                Part = Chain16B,
                InStock = 150,
                OnOrder = [new Delivery(Monday.AddDays(20), 120)],
                LeadTime = TimeSpan.FromDays(35),
                PackSize = 160,
                Price = 2.5,
            }],
            Costs = new PlanningCosts { StoppedLinePerHour = 250, StopHours = 0.6 },
        };
    }
}
