using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Wear;

/// <summary>A lasting change of the wear rate, as when an oiler fails.</summary>
/// <param name="AtHours">Running hours of the chain when it happened.</param>
/// <param name="Factor">The rate after it over the rate before it.</param>
internal sealed record RateStep(double AtHours, double Factor);

/// <summary>A chain's wear rate over its running hours, and the wear that it adds up to.</summary>
/// <remarks>
/// Constant over blocks of 250 h; from block to block its logarithm walks at random with variance
/// <see cref="LogRateVariancePer1000Hours"/>, as load and care do in a plant. Without chance it is constant.
/// </remarks>
internal sealed class RateHistory
{
    private const double BlockHours = 250;
    private const double LogRateVariancePer1000Hours = 0.004;

    private readonly record struct Knot(double Hours, double WearPercent, double PercentPerHour);

    private readonly List<Knot> knots = [];
    private readonly Chance? chance;
    private readonly RateStep? change;
    private double percentPerHour;

    /// <summary>Starts at a rate in percent per 1,000 running hours.</summary>
    public RateHistory(double percentPer1000Hours, Chance? wander = null, RateStep? change = null)
    {
        percentPerHour = percentPer1000Hours / 1000;
        chance = wander;
        this.change = change;
        knots.Add(new Knot(0, 0, percentPerHour));
    }

    /// <summary>The rate at so many running hours, in percent per 1,000 h.</summary>
    public double RateAt(double hours) => 1000 * KnotBefore(hours).PercentPerHour;

    /// <summary>The wear after so many running hours, in percent, as if nothing ever sped it up.</summary>
    public double WearAt(double hours)
    {
        var knot = KnotBefore(hours);
        return knot.WearPercent + (hours - knot.Hours) * knot.PercentPerHour;
    }

    /// <summary>The running hours after which the wear is so much; zero for none.</summary>
    public double HoursTo(double wearPercent)
    {
        if (wearPercent <= 0) return 0;
        while (knots[^1].WearPercent < wearPercent) AddKnot();
        var index = knots.FindLastIndex(k => k.WearPercent < wearPercent);
        return knots[index].Hours + (wearPercent - knots[index].WearPercent) / knots[index].PercentPerHour;
    }

    private Knot KnotBefore(double hours)
    {
        while (knots[^1].Hours <= hours) AddKnot();
        return knots[knots.FindLastIndex(k => k.Hours <= hours)];
    }

    private void AddKnot()
    {
        var last = knots[^1];
        var blockEnd = (Math.Floor(last.Hours / BlockHours) + 1) * BlockHours;
        var changes = change is not null && change.AtHours > last.Hours && change.AtHours <= blockEnd;
        var hours = changes ? change!.AtHours : blockEnd;

        if (hours == blockEnd && chance is not null)
            percentPerHour *= Math.Exp(chance.Normal(0, Math.Sqrt(LogRateVariancePer1000Hours * BlockHours / 1000)));
        if (changes) percentPerHour *= change!.Factor;
        knots.Add(new Knot(hours, last.WearPercent + (hours - last.Hours) * last.PercentPerHour, percentPerHour));
    }
}
