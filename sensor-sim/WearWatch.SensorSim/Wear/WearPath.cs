namespace WearWatch.SensorSim.Wear;

/// <summary>The true elongation of one chain over its running hours.</summary>
/// <remarks>
/// <c>e(h) = y(h) - A exp(-h/T)</c>: run-in A over T hours, on a path y that follows the wear. Up to e_c the path is straight,
/// <c>y = l = e0 + A + wear(h)</c>; above it <c>dy/dl = exp(g (y - e_c))</c>, so <c>y = e_c - ln(1 - g (l - e_c)) / g</c>.
/// All of it in closed form, so that every truth that is written down can be checked with a pocket calculator.
/// </remarks>
internal sealed class WearPath(MillWear constants, RateHistory rates)
{
    /// <summary>A chain that long has left its sprockets; the path stays there.</summary>
    public const double LongestPercent = 8;

    private readonly MillWear c = constants;

    /// <summary>The elongation at so many running hours, in percent.</summary>
    public double ElongationAt(double hours) => PathAt(hours) - c.RunInPercent * Math.Exp(-hours / c.RunInHours);

    /// <summary>The rate at which the elongation grows, in percent per 1,000 running hours.</summary>
    public double RateAt(double hours)
    {
        var path = PathAt(hours);
        var above = Math.Max(0, path - c.AccelerationFromPercent);
        var speedUp = path >= LongestPercent ? 0 : Math.Exp(c.AccelerationPerPercent * above);
        return rates.RateAt(hours) * speedUp + 1000 * c.RunInPercent / c.RunInHours * Math.Exp(-hours / c.RunInHours);
    }

    /// <summary>The running hours at which an elongation is reached; zero when it is there when new.</summary>
    /// <param name="elongationPercent">The elongation; below <see cref="LongestPercent"/>.</param>
    public double HoursAt(double elongationPercent)
    {
        if (elongationPercent <= c.NewPercent) return 0;
        // Run-in only takes away from the path, so the elongation comes between these two; then halving is exact and safe.
        var low = HoursOnPath(elongationPercent);
        var high = HoursOnPath(elongationPercent + c.RunInPercent);
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            if (ElongationAt(middle) < elongationPercent) low = middle;
            else high = middle;
        }

        return high;
    }

    private double PathAt(double hours)
    {
        var line = c.NewPercent + c.RunInPercent + rates.WearAt(hours);
        var above = line - c.AccelerationFromPercent;
        if (above <= 0) return line;
        var left = 1 - c.AccelerationPerPercent * above;
        return left <= 0
            ? LongestPercent
            : Math.Min(LongestPercent, c.AccelerationFromPercent - Math.Log(left) / c.AccelerationPerPercent);
    }

    private double HoursOnPath(double pathPercent)
    {
        var above = Math.Min(pathPercent, LongestPercent) - c.AccelerationFromPercent;
        var line = above <= 0
            ? pathPercent
            : c.AccelerationFromPercent + (1 - Math.Exp(-c.AccelerationPerPercent * above)) / c.AccelerationPerPercent;
        return rates.HoursTo(line - c.NewPercent - c.RunInPercent);
    }
}
