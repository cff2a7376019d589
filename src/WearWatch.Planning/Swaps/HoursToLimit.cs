using WearWatch.Wear;

namespace WearWatch.Planning.Swaps;

/// <summary>The running hours from now until a chain reaches its limit, as a whole distribution.</summary>
/// <remarks>
/// Taken from the 99 percentiles of a <see cref="WearForecast"/>: between two of them each hour is equally likely, below the
/// first one the hours spread evenly from now. Beyond the last one the forecast says nothing; that one percent is taken as
/// reached there, which errs on the safe side.
/// </remarks>
public sealed class HoursToLimit
{
    private const double Share = 0.01;

    private readonly double[] knots;

    /// <param name="forecast">The forecast; its hours count from the last reading.</param>
    /// <param name="hoursSinceReading">Running hours from the last reading until now.</param>
    public HoursToLimit(WearForecast forecast, double hoursSinceReading)
    {
        var passed = forecast.ProbabilityPassed;
        knots = [0, .. forecast.PercentilesHours
            .Select((h, i) => Share * (i + 1) <= passed ? 0 : Math.Max(0, h - hoursSinceReading))];
    }

    /// <summary>The hours at a share of the distribution from 0 to 1; what a simulation draws from.</summary>
    public double At(double share)
    {
        var place = Math.Clamp(share, 0, 1) / Share;
        var below = (int)place;
        return below >= knots.Length - 1 ? knots[^1] : knots[below] + (place - below) * (knots[below + 1] - knots[below]);
    }

    /// <summary>Probability that the limit is passed within so many running hours.</summary>
    public double ProbabilityPast(double hours) =>
        Mean((from, to) => to <= hours ? 1 : from >= hours ? 0 : (hours - from) / (to - from), hour => hour <= hours ? 1 : 0);

    /// <summary>Probability that the chain fails within so many running hours when it is left on.</summary>
    /// <remarks>
    /// <c>E[1 - exp(-(h - T)+ / m)]</c>: T hours to the limit, m mean hours from the limit to failure (a constant hazard), h the
    /// hours given. Each stretch of the distribution is integrated exactly.
    /// </remarks>
    public double ProbabilityFailed(double hours, double meanHoursPastLimit)
    {
        double Failed(double hour) => hour >= hours ? 0 : 1 - Math.Exp(-(hours - hour) / meanHoursPastLimit);
        return Mean((from, to) =>
        {
            if (from >= hours) return 0;
            var end = Math.Min(to, hours);
            var survived = meanHoursPastLimit
                * (Math.Exp(-(hours - end) / meanHoursPastLimit) - Math.Exp(-(hours - from) / meanHoursPastLimit));
            return (end - from - survived) / (to - from);
        }, Failed);
    }

    /// <summary>
    /// The share of the chain's life that is thrown away, in expectation, when it is swapped after so many running hours.
    /// </summary>
    /// <remarks>
    /// <c>E[(T - h)+ / (H + T)]</c>: H the hours it has run up to now. Each stretch of the distribution is integrated exactly.
    /// </remarks>
    public double UnusedLife(double hours, double hoursRun) => Mean(
        (from, to) =>
        {
            if (to <= hours) return 0;
            var begin = Math.Max(from, hours);
            return (to - begin - (hours + hoursRun) * Math.Log((hoursRun + to) / (hoursRun + begin))) / (to - from);
        },
        hour => hour <= hours ? 0 : (hour - hours) / (hoursRun + hour));

    private double Mean(Func<double, double, double> overStretch, Func<double, double> atPoint)
    {
        var sum = atPoint(knots[^1]);
        for (var i = 1; i < knots.Length; i++)
            sum += knots[i] - knots[i - 1] > 1e-9 ? overStretch(knots[i - 1], knots[i]) : atPoint(knots[i]);
        return Share * sum;
    }
}
