using System.Runtime.InteropServices;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>By which part of a pitch the distance of the sensors exceeds a whole number of pitches, from one burst.</summary>
/// <remarks>
/// When a roller is seen at the second sensor, the first sensor's passes tell where the chain stands there: between passes i and
/// i + 1, at the share <c>f = (b - a_i)/(a_{i+1} - a_i)</c> of the way. Both sensors see one rigid run of chain at the same
/// moment, so the speed drops out: the number of pitches between them is a whole number plus f. Over a burst the mean of f
/// counts, of those within four robust deviations of the median: half of the links are outer ones that grew, so that f has two
/// values and their mean is wanted.
/// </remarks>
/// <param name="Fraction">The part of a pitch, from 0 (included) to 1.</param>
/// <param name="Deviation">Standard deviation of single passes about it, in pitches.</param>
/// <param name="Passes">How many passes were used.</param>
/// <param name="PitchesPerSecond">How fast the chain ran.</param>
/// <param name="MeanTravel">How far it had run since the burst's beginning, in pitches, in the middle of these passes.</param>
/// <param name="Slope">By how much the phase rises on each pitch of the way: what one clock gains on the other.</param>
public sealed record BurstPhase(
    double Fraction, double Deviation, int Passes, double PitchesPerSecond, double MeanTravel, double Slope)
{
    /// <summary>Fewer passes give no phase.</summary>
    public const int FewestPasses = 20;

    private const double Outlying = 4;

    /// <summary>The phase of a burst; null when too few passes can be used.</summary>
    public static BurstPhase? Of(PassTrain first, PassTrain second)
    {
        var (shares, travels) = (new List<double>(second.TimesUs.Count), new List<double>(second.TimesUs.Count));
        if (second.TimesUs.Count < FewestPasses) return null;
        var perUs = (second.Numbers[^1] - second.Numbers[0]) / (second.TimesUs[^1] - second.TimesUs[0]);
        foreach (var (pair, share) in Shares(first, second))
        {
            shares.Add(share);
            travels.Add(perUs * second.TimesUs[pair.Second]);
        }

        if (shares.Count < FewestPasses) return null;
        var center = CircularMean(shares);
        var about = new double[shares.Count];
        for (var i = 0; i < about.Length; i++) about[i] = Wrap(shares[i] - center);
        var median = Median.Of(about);
        var deviation = Math.Max(Median.DeviationAbout(median, about), 1e-6);
        int[] kept = [.. Enumerable.Range(0, about.Length).Where(i => Math.Abs(about[i] - median) <= Outlying * deviation)];
        if (kept.Length < FewestPasses) return null;
        if (StraightLine.Fit([.. kept.Select(i => travels[i])], [.. kept.Select(i => about[i])])
            is not TrendFit<StraightLine>.Fitted { Trend: var line }) return null;
        var fraction = center + line.MeanY;
        return new BurstPhase(
            fraction - Math.Floor(fraction), deviation, kept.Length, 1e6 * perUs, line.MeanX, line.Slope);
    }

    /// <summary>A difference of phases, between -1/2 and 1/2.</summary>
    internal static double Wrap(double phase) => phase - Math.Round(phase);

    private static IEnumerable<((int First, int Second) Pair, double Share)> Shares(PassTrain first, PassTrain second)
    {
        var i = 0;
        for (var j = 0; j < second.TimesUs.Count; j++)
        {
            var b = second.TimesUs[j];
            while (i + 1 < first.TimesUs.Count && first.TimesUs[i + 1] <= b) i++;
            if (first.TimesUs[i] <= b && first.IsNext(i))
                yield return ((i, j), (b - first.TimesUs[i]) / (first.TimesUs[i + 1] - first.TimesUs[i]));
        }
    }

    private static double CircularMean(List<double> phases)
    {
        var (sine, cosine) = (0.0, 0.0);
        foreach (var phase in CollectionsMarshal.AsSpan(phases))
        {
            sine += Math.Sin(2 * Math.PI * phase);
            cosine += Math.Cos(2 * Math.PI * phase);
        }

        return Math.Atan2(sine, cosine) / (2 * Math.PI);
    }
}
