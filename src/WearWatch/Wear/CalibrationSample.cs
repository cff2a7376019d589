namespace WearWatch.Wear;

/// <summary>The chains that constants are held against, and how probable their readings are with some.</summary>
/// <remarks>
/// The curve is judged by chains that it was not learned from: each chain meets that of the other nine tenths.
/// </remarks>
internal sealed class CalibrationSample
{
    private const int Folds = 10;
    private readonly IReadOnlyList<TellingChain> chains;
    private readonly Dictionary<(double RunIn, double Hours), Shown> shown = [];

    /// <summary>All chains, or evenly spaced ones where there are more than so many.</summary>
    public CalibrationSample(IReadOnlyList<TellingChain> all, int most) => chains = all.Count <= most
        ? all
        : [.. Enumerable.Range(0, most).Select(i => all[(int)((long)i * all.Count / most)])];

    /// <summary>Whether nothing but the broad prior was known of the chains.</summary>
    public bool OfBroadPrior => chains.All(c => c.Prior.Source == WearPrior.Broad.Source);

    /// <summary>
    /// The constants with the curve and the odds of the clocks that the chains give them, and how probable all that is.
    /// </summary>
    public (WearConstants Constants, double LogDensity) Weighed(WearConstants constants)
    {
        var shape = ShownWith(constants);
        var filters = Filters(constants, shape);
        var evidence = new double[chains.Count][];
        Parallel.For(0, chains.Count, i => evidence[i] = Evidence(filters[i % Folds], chains[i]));

        double[] believed = [.. ConstantsBelief.Onsets.Select(o => o.Chains)];
        if (shape.Curve is not null) believed = [.. believed, ConstantsBelief.CurveChains];
        var (odds, logEvidence) = ClockOdds.Of(evidence, believed);
        var ofCurve = shape.Curve is null ? 0 : odds[^1];
        return (
            constants with
            {
                Onsets = [.. ConstantsBelief.Onsets.Select((o, k) => new OnsetNode(o.Percent, odds[k] / (1 - ofCurve)))],
                Curve = shape.Curve is { } curve ? curve with { Weight = ofCurve } : null,
            },
            logEvidence + ConstantsBelief.LogDensity(constants));
    }

    /// <summary>Constants that <see cref="Weighed"/> gave, with the spread that would have held for the chains.</summary>
    public WearConstants Stretched(WearConstants weighed)
    {
        var shape = ShownWith(weighed);
        var filters = Filters(weighed, shape);
        return weighed with { Spread = SpreadLearning.Of([.. chains.Select((c, i) => (c, shape.Told[i], filters[i % Folds]))]) };
    }

    /// <summary>ln of the probability of the readings with constants as they stand, odds and curve included.</summary>
    public double LogEvidence(WearConstants constants)
    {
        var filter = new WearFilter(constants);
        double[] odds = [.. constants.Onsets.Select(o => o.Weight * (1 - (constants.Curve?.Weight ?? 0)))];
        if (constants.Curve is { } curve) odds = [.. odds, curve.Weight];
        return chains.AsParallel().AsOrdered().Select(c => ClockOdds.LogEvidence(Evidence(filter, c), odds)).ToArray().Sum();
    }

    private static double[] Evidence(WearFilter filter, TellingChain chain) =>
        filter.LogEvidence(filter.Follow(chain.Chain, chain.Prior));

    private static WearFilter[] Filters(WearConstants constants, Shown shape) =>
    [
        .. shape.OfOthers.Select(o => new WearFilter(constants with
        {
            Onsets = constants.Onsets.Count == ConstantsBelief.Onsets.Length
                ? constants.Onsets
                : [.. ConstantsBelief.Onsets.Select(n => new OnsetNode(n.Percent, 1.0 / ConstantsBelief.Onsets.Length))],
            Curve = shape.Curve is null ? null : o! with { Weight = constants.Curve?.Weight ?? 0.5 },
        })),
    ];

    /// <summary>What the chains show of their curve depends on nothing but the run-in.</summary>
    private Shown ShownWith(WearConstants constants)
    {
        var key = (constants.RunInPercent, constants.RunInHours);
        if (shown.TryGetValue(key, out var known)) return known;
        List<StepHours> told = [.. chains.Select(c => StepHours.Of(c, constants))];
        WearCurve?[] others =
            [.. Enumerable.Range(0, Folds).Select(f => CurveLearning.Of([.. told.Where((_, i) => i % Folds != f)]))];
        return shown[key] = new(told, others, others.All(o => o is not null) ? CurveLearning.Of(told) : null);
    }

    /// <summary>What the chains show of their curve.</summary>
    /// <param name="Told">What each tells.</param>
    /// <param name="OfOthers">For each tenth of the chains the curve of the others.</param>
    /// <param name="Curve">The curve of all; null where too few tell of it.</param>
    private sealed record Shown(List<StepHours> Told, WearCurve?[] OfOthers, WearCurve? Curve);
}
