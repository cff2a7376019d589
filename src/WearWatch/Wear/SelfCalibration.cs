namespace WearWatch.Wear;

/// <summary>Finds a plant's own constants of wear, and its own curve, from what its chains have shown.</summary>
/// <remarks>
/// <para>Sought is the largest probability of the constants given all readings: that of the readings
/// (<see cref="WearFilter.LogEvidence"/>, over the clocks by <see cref="ClockOdds"/>) times what is believed of constants anyway
/// (<see cref="ConstantsBelief"/>). With few chains they therefore stay near the defaults, with many they are the plant's; there
/// is no number at which the one turns into the other. The search goes along one constant after another, in strides that
/// shorten.</para>
/// <para>Suspended chains count like those that have run out: their readings up to then are as likely, and they were taken off
/// for what these showed. The result depends on nothing but the chains and their order. docs/method.md.</para>
/// </remarks>
public static class SelfCalibration
{
    /// <summary>With more chains the search takes long and finds no other; then so many, evenly spaced, speak for all.</summary>
    public const int MostChains = 160;

    private const int MostStrides = 4;
    private const double GainToGoOn = 1;
    private static readonly double[] Strides = [1, 0.5, 0.25];

    /// <summary>Calibrates on chains with their readings.</summary>
    /// <param name="chains">Chains known from their fitting, run out or not, each with the prior it had.</param>
    /// <param name="inUse">The constants in use, over which the gain is told.</param>
    public static CalibrationOutcome Of(IReadOnlyList<TellingChain> chains, WearConstants inUse)
    {
        if (chains.Count == 0) return new CalibrationOutcome.NoChains();

        var sample = new CalibrationSample(chains, MostChains);
        var start = WearConstants.Default with { Prior = PriorCorrection.None with { OfBroad = sample.OfBroadPrior } };
        var best = Best(ConstantsBelief.Noises.Select(n => start with { RateDrift = n.Drift, UnevenWear = n.Uneven }), sample);
        foreach (var stride in Strides)
        {
            var before = best.LogDensity;
            foreach (var axis in ConstantsBelief.Axes) best = Along(axis, stride, best, sample);
            if (stride == Strides[0])
                best = Best(ConstantsBelief.Most.Select(m => best.Constants with { MostAcceleration = m }), sample);
            if (best.LogDensity - before < GainToGoOn) break;
        }

        return new CalibrationOutcome.Calibrated(
            sample.Stretched(best.Constants), chains.Count, sample.LogEvidence(best.Constants) - sample.LogEvidence(inUse));
    }

    private static (WearConstants Constants, double LogDensity) Along(
        ConstantsAxis axis, double stride, (WearConstants Constants, double LogDensity) from, CalibrationSample sample)
    {
        var best = from;
        foreach (var direction in (double[])[1, -1])
        {
            for (var i = 0; i < MostStrides; i++)
            {
                var tried = sample.Weighed(axis.Moved(best.Constants, direction * stride));
                if (!(tried.LogDensity > best.LogDensity)) break;
                best = tried;
            }

            if (best.LogDensity > from.LogDensity) break;
        }

        return best;
    }

    private static (WearConstants Constants, double LogDensity) Best(
        IEnumerable<WearConstants> among, CalibrationSample sample) => among.Select(sample.Weighed).MaxBy(w => w.LogDensity);
}
