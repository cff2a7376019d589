using WearWatch.Wear;

namespace WearWatch.Lubrication.Intervals;

/// <summary>Learns from a plant's history which interval between oilings costs least.</summary>
/// <remarks>
/// <para>Each chain is its own yardstick: what is used is that a chain wore more between two readings with old oil than between
/// two with fresh oil (<see cref="OilWear"/>). Differences between chains are not used at all. What stays in the way: whatever
/// goes with late oiling at one and the same chain, such as a busy and dusty season, and oilings that nobody recorded, which blur
/// the effect and make it look smaller.</para>
/// <para>Uncertainty by drawing whole chains with replacement (bootstrap): it allows for jumps of a rate, misreadings and all
/// else that goes on within a chain without a law for it. In each draw one shape of the rise is taken as often as it explains the
/// readings, and as none of the six is exactly true the interval is given a further 7 % of spread. An effect is claimed when it
/// lies more than 2.326 of its standard errors above none, which chance does once in a hundred plants.</para>
/// </remarks>
public static class IntervalLearning
{
    /// <summary>Fewer chains say nothing: the spread between so few is not known either.</summary>
    public const int FewestChains = 15;

    private const int Draws = 200;
    private const double ShapeDeviation = 0.07;
    private const double ErrorsToClaim = 2.326;
    private const double ShortestIntervalHours = 4;
    private const int PointsPerCurve = 60;

    /// <summary>Learns.</summary>
    /// <param name="lives">Chains of one class: it is the average chain of these that the costs are for.</param>
    /// <param name="costs">What oiling and wear cost; null where the plant has not said.</param>
    /// <param name="wear">How wear wanders.</param>
    /// <param name="seed">For the draws.</param>
    public static LearnedInterval Of(IReadOnlyList<OiledLife> lives, OilingCosts? costs, WearConstants wear, int seed)
    {
        var usable = lives.Select(life => (Life: life, Readings: life.Usable())).Where(u => u.Readings.Count > 0).ToList();
        var data = DataOf(usable);
        if (usable.Count < FewestChains)
        {
            return new LearnedInterval.TooLittle(data, $"{usable.Count} of the {FewestChains} chains that it takes have four "
                + $"readings of steady wear with three "
                    + $"lubrications between them");
        }

        var shapes = AgeShape.For(data.MeanIntervalHours);
        List<OilWear> chains = [.. usable.Select(u => OilWear.Of(u.Readings, u.Life.Ages, wear, shapes))];
        var judged = OilEffect.Judge(chains, shapes);
        var all = OilEffect.Of(chains, shapes, judged, [.. Enumerable.Repeat(1, chains.Count)]);
        var drawn = Enumerable.Range(0, Draws).Select(Drawing(chains, shapes, judged, seed)).ToList();
        double[] shares = [.. drawn.Select(d => d.Effect.Share).Order()];
        var (low, high) = (Quantile(shares, 0.05), Quantile(shares, 0.95));
        var claimed = all.SteadyShare > ErrorsToClaim * Deviation([.. drawn.Select(d => d.Effect.SteadyShare)]);
        if (!claimed) return new LearnedInterval.NoEffect(data, all.Share, low, high);
        var rate = chains.Average(c => c.Rate);
        return new LearnedInterval.Effect(data, all.Share, low, high, costs is null
            ? null
            : Best(all, rate, drawn, costs, data, shapes, seed));
    }

    private static Func<int, (OilEffect Effect, double Rate)> Drawing(
        List<OilWear> chains, IReadOnlyList<AgeShape> shapes, double[][][] judged, int seed)
    {
        var chance = new Random(seed);
        var times = new int[chains.Count];
        return _ =>
        {
            Array.Clear(times);
            for (var i = 0; i < times.Length; i++) times[chance.Next(times.Length)]++;
            return (OilEffect.Of(chains, shapes, judged, times), chains.Zip(times, (c, t) => t * c.Rate).Sum() / times.Length);
        };
    }

    private static BestInterval Best(
        OilEffect effect, double rate, List<(OilEffect Effect, double Rate)> drawn, OilingCosts costs, IntervalData data,
        IReadOnlyList<AgeShape> shapes, int seed)
    {
        var chance = new Random(seed);
        double[] intervals = [.. Enumerable.Range(0, PointsPerCurve + 1).Select(i =>
            ShortestIntervalHours * Math.Pow(data.LongestHours / ShortestIntervalHours, (double)i / PointsPerCurve))];
        double[][] rises = [.. intervals.Select(t => (double[])[.. shapes.Select(s => s.Mean(t))])];
        double[][] curves = [.. drawn.Select(d => Costs(d.Effect.ByOneShape(chance.NextDouble()), d.Rate))];
        var middle = Costs(effect, rate);
        double[] best = [.. curves.Select(c => Cheapest(intervals, c) * Math.Exp(ShapeDeviation * Normal(chance))).Order()];
        var hours = Cheapest(intervals, middle);
        var now = costs.Per1000Hours(data.MeanIntervalHours, rate);
        return new BestInterval(
            hours, Math.Min(Quantile(best, 0.05), hours), Math.Max(Quantile(best, 0.95), hours),
            hours >= intervals[^2],
            [
                .. intervals.Select((t, i) =>
                {
                    double[] at = [.. curves.Select(c => c[i]).Order()];
                    return new CostPoint(t, middle[i], Quantile(at, 0.05), Quantile(at, 0.95));
                }),
            ],
            now - costs.Per1000Hours(hours, rate * effect.RateAt(hours)));

        double[] Costs(OilEffect e, double r) => [.. intervals.Select((t, i) => costs.Per1000Hours(t, r * e.RateAt(rises[i])))];
    }

    /// <summary>
    /// Where a curve is lowest: between its points by the parabola through the lowest and its neighbours, in ln of the interval.
    /// </summary>
    private static double Cheapest(double[] intervals, double[] curve)
    {
        var at = Array.IndexOf(curve, curve.Min());
        if (at == 0 || at == curve.Length - 1) return intervals[at];
        var (left, middle, right) = (curve[at - 1], curve[at], curve[at + 1]);
        var shift = 0.5 * (left - right) / (left - 2 * middle + right);
        return intervals[at] * Math.Pow(intervals[at + 1] / intervals[at], shift);
    }

    private static IntervalData DataOf(List<(OiledLife Life, IReadOnlyList<Wear.Observation> Readings)> usable)
    {
        var hours = usable.Sum(u => u.Readings[^1].HoursSinceFitting - u.Readings[0].HoursSinceFitting);
        var oilings = usable.Sum(u => u.Life.OilingsIn(u.Readings));
        return new IntervalData(
            usable.Count, usable.Sum(u => u.Readings.Count), oilings, hours, oilings > 0 ? hours / oilings : 0, Longest(usable));
    }

    /// <summary>The oil age that 95 % of the running hours do not pass.</summary>
    private static double Longest(List<(OiledLife Life, IReadOnlyList<Wear.Observation> Readings)> usable)
    {
        double[] cycles =
        [
            .. usable.SelectMany(u =>
                u.Life.Ages.OiledAtHours.Zip(u.Life.Ages.OiledAtHours.Skip(1), (a, b) => (From: a, Hours: b - a))
                .Where(c => c.From >= u.Readings[0].HoursSinceFitting && c.From < u.Readings[^1].HoursSinceFitting)
                .Select(c => c.Hours)).Order(),
        ];
        var beyond = 0.05 * cycles.Sum();
        var (age, over, left) = (0.0, cycles.Sum(), cycles.Length);
        foreach (var cycle in cycles)
        {
            // Below this cycle's length all the cycles that are left run on: the hours beyond fall by as many.
            if (over - left * (cycle - age) < beyond) return age + (over - beyond) / left;
            over -= left * (cycle - age);
            (age, left) = (cycle, left - 1);
        }

        return Math.Max(age, ShortestIntervalHours * 2);
    }

    private static double Quantile(double[] sorted, double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    private static double Deviation(double[] values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Average(v => (v - mean) * (v - mean)));
    }
}
