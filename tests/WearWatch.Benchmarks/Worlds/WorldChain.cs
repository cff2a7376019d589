using WearWatch.Wear;

namespace WearWatch.Benchmarks.Worlds;

/// <summary>A chain of a world with its readings and the hours at which it truly reached the limits.</summary>
/// <param name="Observations">Its readings, until it was worn beyond the highest limit.</param>
/// <param name="TrueHours">Hours at which it first reached each limit asked about.</param>
internal sealed record WorldChain(IReadOnlyList<Observation> Observations, IReadOnlyList<double> TrueHours)
{
    /// <summary>The limits asked about, in percent.</summary>
    public static readonly double[] Limits = [2, 3];

    private const double StepHours = 10;
    private const double LongestHours = 80_000;
    private const double RoundingHours = 1;
    private const int Persons = 6;

    /// <summary>The tape over a metre of chain.</summary>
    private const double ScatterPercent = 0.05;

    /// <summary>Hours at which its rate trebled; infinite where it did not.</summary>
    public double RisenHours { get; init; } = double.PositiveInfinity;

    /// <summary>The chain as one that ran out.</summary>
    public FittedChain Life => new(true, Observations[^1].HoursSinceFitting, Removed: true, Observations);

    /// <summary>So many chains of a world; the same seed gives the same chains.</summary>
    /// <param name="world">The world.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">For chance.</param>
    /// <param name="rises">Whether each chain's rate trebles at a moment of its middle third.</param>
    public static WorldChain[] Many(World world, int count, int seed, bool rises = false)
    {
        var persons = new Chance(seed);
        double[] bias = [.. Enumerable.Range(0, Persons).Select(_ => world.PersonPercent * persons.Normal())];
        return [.. Enumerable.Range(0, count).Select(i => One(world, new Chance(1000 * seed + i), bias, rises))];
    }

    private static WorldChain One(World world, Chance chance, double[] bias, bool rises)
    {
        var risen = rises ? chance.Between(2000, 5000) : double.PositiveInfinity;
        var wornThen = 0.0;
        var (wear, start, runIn) = (world.Wear(chance), chance.Between(0, 0.15), world.RunInPercent(chance));
        var readings = new List<Observation>();
        double[] crossed = [.. Limits.Select(_ => double.NaN)];
        var (next, percent) = (chance.Between(50, 700), 0.0);
        for (var hours = 0.0; hours < LongestHours && !(percent > Limits[^1] && hours >= next); hours += StepHours)
        {
            percent = start + runIn * (1 - Math.Exp(-hours / world.RunInHours)) + Worn(hours);
            for (var i = 0; i < Limits.Length; i++)
                if (percent >= Limits[i] && double.IsNaN(crossed[i])) crossed[i] = hours;
            if (hours < next) continue;
            readings.Add(Read(hours));
            next += chance.Between(350, 950);
        }

        readings.Add(Read(next));
        return new(readings, [.. crossed.Select(c => double.IsNaN(c) ? LongestHours : c)]) { RisenHours = risen };

        double Worn(double hours)
        {
            var asUsual = wear(hours);
            if (hours <= risen) wornThen = asUsual;
            return hours <= risen ? asUsual : wornThen + 3 * (asUsual - wornThen);
        }

        Observation Read(double hours) => new(
            Math.Round(hours / RoundingHours) * RoundingHours,
            percent + ScatterPercent * chance.Normal() + bias[chance.OneOf(Persons)], ScatterPercent, readings.Count);
    }
}
