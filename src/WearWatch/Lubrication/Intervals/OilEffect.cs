namespace WearWatch.Lubrication.Intervals;

/// <summary>How the wear rate rises with the hours since oiling, as a plant's own chains show it.</summary>
/// <remarks>
/// Wear rate at an oil age: <c>r0 (1 + b g(age))</c>, g one of the shapes. The effect is told as the share of today's wear that
/// the ageing of the oil makes, <c>share = b m / (1 + b m)</c>, m the mean of g over the hours run. No shape is chosen: each
/// counts as much as it explains the readings.
/// </remarks>
internal sealed class OilEffect
{
    /// <summary>Shares looked at: below zero too, or chance could only ever find an effect.</summary>
    private const double LeastShare = -0.7;
    private const double GreatestShare = 0.98;
    private const int Shares = 113;

    private readonly IReadOnlyList<AgeShape> shapes;
    private readonly double[] share;
    private readonly double[] weight;
    private readonly double[] meanRise;

    private OilEffect(IReadOnlyList<AgeShape> shapes, double[] share, double[] weight, double[] meanRise) =>
        (this.shapes, this.share, this.weight, this.meanRise) = (shapes, share, weight, meanRise);

    /// <summary>Share of today's wear that the ageing of the oil makes.</summary>
    public double Share => share.Zip(weight, (s, w) => s * w).Sum();

    /// <summary>Share of today's wear that the ageing of the oil makes if the rate rises steadily with it.</summary>
    /// <remarks>It hardly hangs on the shape, and so shows best whether there is an effect at all.</remarks>
    public double SteadyShare => share[AgeShape.Steady];

    /// <summary>The effect by one shape alone, taken as often as it explains the readings.</summary>
    /// <param name="chance">A number drawn evenly from 0 to 1.</param>
    public OilEffect ByOneShape(double chance)
    {
        var k = 0;
        for (var below = weight[0]; k < weight.Length - 1 && chance >= below; below += weight[k]) k++;
        return new OilEffect(shapes, share, [.. weight.Select((_, i) => i == k ? 1.0 : 0)], meanRise);
    }

    /// <summary>
    /// The wear rate over today's when the chains are oiled at a steady interval, by the mean rise of each shape over it.
    /// </summary>
    public double RateAt(double[] meanRiseOverInterval)
    {
        var rate = 1.0;
        for (var k = 0; k < shapes.Count; k++) rate += weight[k] * share[k] * (meanRiseOverInterval[k] / meanRise[k] - 1);
        return rate;
    }

    /// <summary>The wear rate over today's when the chains are oiled at a steady interval.</summary>
    /// <param name="intervalHours">The interval in running hours.</param>
    public double RateAt(double intervalHours) => RateAt([.. shapes.Select(s => s.Mean(intervalHours))]);

    /// <summary>
    /// How well every share of every shape explains each chain's readings: half of what it leaves, with a minus.
    /// </summary>
    public static double[][][] Judge(IReadOnlyList<OilWear> chains, IReadOnlyList<AgeShape> shapes)
    {
        var mean = MeanRise(chains, shapes);
        return
        [
            .. chains.Select(chain => (double[][])
            [
                .. shapes.Select((_, k) => (double[])
                [
                    .. Enumerable.Range(0, Shares)
                        .Select(i => -0.5 * chain.Precision * chain.Unexplained(EffectOf(ShareAt(i), mean[k]), k)),
                ]),
            ]),
        ];
    }

    /// <summary>The effect that a choice of chains shows.</summary>
    /// <param name="chains">All chains.</param>
    /// <param name="shapes">The shapes.</param>
    /// <param name="judged">How well each share explains each of them (<see cref="Judge"/>).</param>
    /// <param name="times">How often each chain counts.</param>
    public static OilEffect Of(IReadOnlyList<OilWear> chains, IReadOnlyList<AgeShape> shapes, double[][][] judged, int[] times)
    {
        double[][] sums = [.. shapes.Select((_, k) => Sum(judged, times, k))];
        var best = sums.Max(s => s.Max());
        var (share, weight) = (new double[shapes.Count], new double[shapes.Count]);
        for (var k = 0; k < shapes.Count; k++)
        {
            var bestOfShape = sums[k].Max();
            for (var i = 0; i < Shares; i++)
            {
                var likelihood = Math.Exp(sums[k][i] - bestOfShape);
                weight[k] += likelihood;
                share[k] += likelihood * ShareAt(i);
            }

            share[k] /= weight[k];
            weight[k] *= Math.Exp(bestOfShape - best);
        }

        var total = weight.Sum();
        return new OilEffect(shapes, share, [.. weight.Select(w => w / total)], MeanRise(chains, shapes));
    }

    private static double ShareAt(int i) => LeastShare + (GreatestShare - LeastShare) * i / (Shares - 1);

    private static double EffectOf(double share, double meanRise) => share / (1 - share) / meanRise;

    private static double[] MeanRise(IReadOnlyList<OilWear> chains, IReadOnlyList<AgeShape> shapes)
    {
        var hours = chains.Sum(c => c.ThousandHours);
        return [.. shapes.Select((_, k) => chains.Sum(c => c.RisenThousandHours[k]) / hours)];
    }

    private static double[] Sum(double[][][] judged, int[] times, int shape)
    {
        var sum = new double[Shares];
        for (var chain = 0; chain < judged.Length; chain++)
        {
            if (times[chain] == 0) continue;
            var own = judged[chain][shape];
            for (var i = 0; i < Shares; i++) sum[i] += times[chain] * own[i];
        }

        return sum;
    }
}
