using WearWatch.Lubrication;
using WearWatch.Lubrication.Intervals;
using WearWatch.Wear;

namespace WearWatch.Tests.Lubrication;

/// <summary>
/// A simulated plant whose wear follows the age of the oil by a law that is known, hour by hour. It shares nothing with the
/// estimator: no formula, no integral, no power of the age.
/// </summary>
/// <param name="Law">By what an hour's wear is multiplied when the oil is so many hours old.</param>
/// <param name="Chains">Number of chains.</param>
internal sealed record OiledPlant(Func<double, double> Law, int Chains = 60)
{
    private const int HoursOfTwoYears = 2 * 6000;

    public const double CostOfOiling = 6;
    public const double CostOfChain = 1500;
    public const double LimitPercent = 3;

    public static OilingCosts Costs { get; } = new(CostOfOiling, CostOfChain, LimitPercent);

    /// <summary>How irregularly each chain is oiled: standard deviation of ln of its intervals.</summary>
    public double Irregularity { get; init; } = 0.6;

    /// <summary>Share of the readings that are misread by several tenths of a percent and pass as good.</summary>
    public double Misread { get; init; }

    /// <summary>Whether chains that are oiled seldom wear faster for another reason, a bad place.</summary>
    public bool NeglectGoesWithBadPlaces { get; init; }

    /// <summary>Simulates the plant.</summary>
    public (IReadOnlyList<OiledLife> Lives, double TrueOptimumHours) Run(int seed)
    {
        var chance = new Random(seed);
        var freshRates = new List<double>();
        var lives = Enumerable.Range(0, Chains).Select(_ => Life(chance, freshRates)).ToList();
        return (lives, Optimum(freshRates.Average()));
    }

    private OiledLife Life(Random chance, List<double> freshRates)
    {
        var usualInterval = 150 * Math.Exp(0.3 * Normal(chance));
        var place = NeglectGoesWithBadPlaces ? Math.Pow(usualInterval / 150, 1.5) : 1;
        var freshRate = 0.09 * place * Math.Exp(0.35 * Normal(chance)); // percent per 1,000 h on fresh oil
        freshRates.Add(freshRate);
        var scatter = 0.02 + 0.03 * chance.NextDouble();
        var oilings = new List<double> { 0 };
        var observations = new List<Observation>();
        var (elongation, season) = (0.15 * chance.NextDouble() + 0.2, 0.0);
        var (nextOiling, nextReading) = (Interval(chance, usualInterval), 120 + 400 * chance.NextDouble());
        for (var hour = 0; hour < HoursOfTwoYears; hour++)
        {
            // The rate wanders a little from month to month, whatever the oil does.
            if (hour % 500 == 0) season = 0.9 * season + 0.03 * Normal(chance);
            elongation += freshRate / 1000 * Law(hour + 0.5 - oilings[^1]) * Math.Exp(season);
            if (hour + 1 >= nextOiling)
            {
                oilings.Add(hour + 1);
                nextOiling = hour + 1 + Interval(chance, usualInterval);
            }

            if (hour + 1 < nextReading) continue;
            var slip = chance.NextDouble() < Misread ? 0.3 * Normal(chance) : 0;
            observations.Add(
                new Observation(hour + 1, elongation + slip + scatter * Normal(chance), scatter, observations.Count));
            nextReading = hour + 1 + 200 + 600 * chance.NextDouble();
        }

        return new OiledLife(observations, OilAges.At(oilings));
    }

    private double Interval(Random chance, double usual) => Math.Max(usual * Math.Exp(Irregularity * Normal(chance)), 8);

    /// <summary>The cheapest steady interval, by trying every whole hour.</summary>
    private double Optimum(double freshRate)
    {
        var (best, least, wear) = (0, double.PositiveInfinity, 0.0);
        for (var interval = 1; interval <= 3000; interval++)
        {
            wear += freshRate / 1000 * Law(interval - 0.5);
            var cost = (CostOfChain * wear / LimitPercent + CostOfOiling) / interval;
            if (cost < least) (best, least) = (interval, cost);
        }

        return best;
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
