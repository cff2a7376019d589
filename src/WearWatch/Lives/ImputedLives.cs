using MathNet.Numerics.Distributions;
using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>
/// A law of lives from the wear of all chains: one that was taken off before its limit counts with what its forecast then said.
/// </summary>
/// <remarks>
/// <para>A chain that is replaced because it is nearly worn was not suspended by chance: who counts it as an ordinary suspension
/// takes it for long-lived. Its wear at removal tells when it would have reached the limit; such pseudo failure times are W. Q.
/// Meeker and L. A. Escobar, Statistical Methods for Reliability Data, 1998, chapter 13 (from memory). One figure for each would
/// say it were known: so each such life is drawn <see cref="Imputations"/> times from its forecast, the law fitted to each set,
/// and the fits are put together by D. B. Rubin's rules (Multiple Imputation for Nonresponse in Surveys, 1987, chapter 3, from
/// memory): with W the mean of the variances and B the variance of the estimates, on the logarithm the total is <c>W + (1 + 1/M)
/// B</c> and Student's t has <c>(M - 1)(1 + W/((1 + 1/M) B))^2</c> degrees of freedom.</para>
/// <para>A suspended chain without a forecast stays suspended. The same lives give the same figures: the draws are by a
/// seed.</para>
/// </remarks>
public sealed class ImputedLives
{
    /// <summary>M: how often each suspended life is drawn.</summary>
    public const int Imputations = 25;

    private const int Seed = 41;
    private readonly IReadOnlyList<LifeFit> fits;

    private ImputedLives(IReadOnlyList<LifeFit> fits, int drawn) => (this.fits, Drawn) = (fits, drawn);

    /// <summary>How many lives were drawn from their forecasts.</summary>
    public int Drawn { get; }

    /// <summary>The hours by which one in ten has failed, with its interval.</summary>
    public (double Hours, ConfidenceInterval Interval) B10(double level) => At(0.10, level);

    /// <summary>The hours by which half have failed, with their interval.</summary>
    public (double Hours, ConfidenceInterval Interval) Median(double level) => At(0.50, level);

    /// <summary>The hours by which a share has failed, with their interval.</summary>
    public (double Hours, ConfidenceInterval Interval) At(double shareFailed, double level) =>
        Pooled([.. fits.Select(f => (Math.Log(f.HoursAt(shareFailed)), f.LogHoursErrorAt(shareFailed)))], level);

    /// <summary>Steepness on the law's paper, with its interval.</summary>
    public (double Value, ConfidenceInterval Interval) Steepness(double level) =>
        Pooled([.. fits.Select(f => (Math.Log(f.Steepness), f.SteepnessStandardError / f.Steepness))], level);

    /// <summary>Fits a law; null where no suspended life has a forecast, or nothing can be fitted.</summary>
    public static ImputedLives? Of(IReadOnlyCollection<Life> lives, LifeLaw law)
    {
        var drawn = lives.Count(l => l is { Failed: false, Ahead: not null });
        if (drawn == 0) return null;
        var orders = new Random(Seed);
        var sets = Enumerable.Range(0, Imputations).Select(_ => new List<Life>(lives.Count)).ToList();
        foreach (var life in lives)
        {
            if (life.Failed || life.Ahead is null)
            {
                foreach (var set in sets) set.Add(life);
                continue;
            }

            // Each life takes every M-th of its forecast once, in an order of its own: the sets are independent of each other.
            var places = Enumerable.Range(0, Imputations).ToArray();
            orders.Shuffle(places);
            for (var m = 0; m < Imputations; m++)
                sets[m].Add(OneOf(life, life.Ahead, (places[m] + orders.NextDouble()) / Imputations));
        }

        var fits = sets.AsParallel().AsOrdered().Select(s => LifeFit.To(s, law)).OfType<LifeFitOutcome.Fitted>()
            .Select(o => o.Fit).ToList();
        return fits.Count == Imputations ? new ImputedLives(fits, drawn) : null;
    }

    private static Life OneOf(Life life, WearForecast ahead, double share)
    {
        var percent = 100 * share;
        var below = Math.Clamp((int)percent, 1, 98);
        var (low, high) = (ahead.PercentilesHours[below - 1], ahead.PercentilesHours[below]);
        var hours = low + (high - low) * Math.Clamp(percent - below, 0, 1);
        return hours >= WearForecast.HorizonHours
            ? new Life(life.Hours + WearForecast.HorizonHours, life.End)
            : new Life(life.Hours + hours, LifeEnd.ReachedLimit);
    }

    private static (double Value, ConfidenceInterval Interval) Pooled((double Log, double Error)[] estimates, double level)
    {
        var mean = estimates.Average(e => e.Log);
        var within = estimates.Average(e => e.Error * e.Error);
        var between = estimates.Sum(e => (e.Log - mean) * (e.Log - mean)) / (Imputations - 1);
        var added = (1 + 1.0 / Imputations) * between;
        var freedom = added > 0 ? (Imputations - 1) * Math.Pow(1 + within / added, 2) : double.PositiveInfinity;
        var reach = Math.Sqrt(within + added) * (freedom < 1e6
            ? StudentT.InvCDF(0, 1, freedom, (1 + level) / 2)
            : Normal.InvCDF(0, 1, (1 + level) / 2));
        return (Math.Exp(mean), new(Math.Exp(mean - reach), Math.Exp(mean + reach)));
    }
}
