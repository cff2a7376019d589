using WearWatch.Learning;
using WearWatch.Lives;

namespace WearWatch.Plant.Costs;

/// <summary>What a change of a class saves in a year, and when it has paid for itself. Amounts in the plant's money.</summary>
/// <remarks>
/// Chains, sprockets, stops and breakdowns go with the wear rate; lubricant and the planner's time are left out. The error comes
/// from the number of swaps in the year (Poisson, its square root) and from the regression, combined to first order
/// (docs/references.md [1], 5.1.2).
/// </remarks>
/// <param name="CostNow">What the chains of the class that would change cost in the year up to now.</param>
/// <param name="Swaps">Swaps behind that.</param>
/// <param name="Saved">What would be saved in a year, before what the change costs each year.</param>
/// <param name="Interval">Its 90 % interval.</param>
/// <param name="Once">What the change costs once.</param>
/// <param name="EachYear">What it costs each year.</param>
public sealed record ClassSaving(
    double CostNow, int Swaps, double Saved, ConfidenceInterval Interval, double Once, double EachYear)
{
    private const double Errors90 = 1.6449;

    /// <summary>Years until it has paid for itself; infinite when it never does.</summary>
    public double Years => YearsAt(Saved);

    /// <summary>The years at the ends of the interval: at best, at worst.</summary>
    public (double Best, double Worst) YearsBetween => (YearsAt(Interval.High), YearsAt(Interval.Low));

    /// <summary>Works it out; null with no swap in the year, of which nothing can be saved.</summary>
    public static ClassSaving? Of(ClassChange change, CostStatement year, double once, double eachYear)
    {
        if (year is { Swaps: 0 } or { Total: <= 0 }) return null;
        var cost = year.Total * change.Changed / change.OfClass;
        double Part(double lifeFactor) => 1 - 1 / lifeFactor;
        var part = Part(change.Rate.LifeFactor);
        var partError = (Part(change.Rate.LifeFactorHigh) - Part(change.Rate.LifeFactorLow)) / 2;
        var half = Math.Sqrt(
            Math.Pow(cost * partError, 2) + Math.Pow(Errors90 * part * cost / Math.Sqrt(year.Swaps), 2));
        var saved = cost * part;
        return new ClassSaving(cost, year.Swaps, saved, new ConfidenceInterval(saved - half, saved + half), once, eachYear);
    }

    private double YearsAt(double saved) =>
        saved > EachYear ? Once / (saved - EachYear) : double.PositiveInfinity;
}
