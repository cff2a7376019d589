using WearWatch.Benchmarks.Worlds;

namespace WearWatch.Benchmarks.Years;

/// <summary>What is true of one chain from its fitting on, whoever looks: its wear, and when it would break.</summary>
internal sealed class TrueLife
{
    /// <summary>The limit of every chain, in percent.</summary>
    public const double LimitPercent = 3;

    private const double StepHours = 10;
    private const double LongestHours = 60_000;

    private readonly List<double> percents = [];

    /// <summary>The life of the so-manieth chain of a position; the same for every way of running the mill.</summary>
    /// <param name="world">The world.</param>
    /// <param name="seed">The mill's luck.</param>
    /// <param name="position">Which position.</param>
    /// <param name="nth">Which chain there, from 0.</param>
    /// <param name="fittedYear">When it is fitted, in years from the first.</param>
    /// <param name="meanHoursPastLimit">Mean hours from the limit to the failure.</param>
    public TrueLife(YearsWorld world, int seed, int position, int nth, double fittedYear, double meanHoursPastLimit)
    {
        var chance = new Chance((seed * 1000 + position) * 100 + nth);
        var (wear, start, runIn) = (world.Physics.Wear(chance), chance.Between(0, 0.15), world.Physics.RunInPercent(chance));
        var (luck, rate) = (chance.Wait(meanHoursPastLimit), world.RateOf(fittedYear));
        ReadingSeed = chance.OneOf(int.MaxValue);
        ReachesLimitAt = FailsAt = LongestHours;
        for (var hours = 0.0; hours < Math.Min(FailsAt, LongestHours) + StepHours; hours += StepHours)
        {
            percents.Add(start + runIn * (1 - Math.Exp(-hours / world.Physics.RunInHours)) + wear(rate * hours));
            if (percents[^1] < LimitPercent || ReachesLimitAt < LongestHours) continue;
            (ReachesLimitAt, FailsAt) = (hours, hours + luck);
        }
    }

    /// <summary>Running hours at which it reaches its limit.</summary>
    public double ReachesLimitAt { get; }

    /// <summary>Running hours at which it breaks if it is left on.</summary>
    public double FailsAt { get; }

    /// <summary>Luck of its readings.</summary>
    public int ReadingSeed { get; }

    /// <summary>Its elongation in percent after so many hours.</summary>
    public double PercentAt(double hours) => percents[Math.Min((int)(hours / StepHours), percents.Count - 1)];
}
