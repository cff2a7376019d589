using MathNet.Numerics.Distributions;

namespace WearWatch.Wear;

/// <summary>A forecast in closed form, good enough to sort a thousand chains by: hours left are lognormal.</summary>
/// <remarks>
/// <c>ln R ~ N(ln(L - l) - rho, P_rr + P_ll/(L-l)^2 + 2 P_lr/(L-l) + q R/3 + eta/R)</c>, R in 1,000 h, from the mean belief on
/// the wear clock. Were R certain, a jump by a factor k yet to come would bring the median to
/// <c>min(R, R/k + (1 - 1/k) ln 2/lambda)</c>; that much is taken off. For sorting, never a planner's date.
/// </remarks>
/// <param name="MiddleHours">Half of such chains last longer; zero when the limit has been passed.</param>
/// <param name="LogDeviation">Standard deviation of ln(hours).</param>
public readonly record struct CrossingGlance(double MiddleHours, double LogDeviation)
{
    /// <summary>The hours left at a percentile, 1 to 99.</summary>
    public double Quantile(int percent) => MiddleHours * Math.Exp(LogDeviation * Normal.InvCDF(0, 1, percent / 100.0));

    internal static CrossingGlance Of(WearTrack track, double limitPercent, WearFilter filter)
    {
        double distance = 0, rate = 0, rate2 = 0, wear = 0, both = 0;
        var beliefs = (
            from clock in filter.Weigh(track)
            from account in clock.Accounts
            select (Weight: clock.Weight * Math.Exp(account.LogWeight), Limit: clock.Clock.FromElongation(limitPercent),
                Belief: account.BeliefAt(track.Hours, filter.Constants))).ToList();
        foreach (var (weight, limit, belief) in beliefs)
        {
            distance += weight * (limit - belief.Wear);
            rate += weight * belief.LogRate;
        }

        if (!(distance > 0)) return new(0, 0);
        foreach (var (weight, limit, belief) in beliefs)
        {
            var (off, apart) = (limit - belief.Wear - distance, belief.LogRate - rate);
            wear += weight * (belief.WearVariance + off * off);
            rate2 += weight * (belief.LogRateVariance + apart * apart);
            both += weight * (belief.Covariance - off * apart);
        }

        var thousandHours = distance * Math.Exp(-rate);
        var variance = rate2 + wear / (distance * distance) + 2 * both / distance
            + filter.Constants.RateDrift * thousandHours / 3 + filter.Constants.UnevenWear / thousandHours;
        var share = Math.Exp(-filter.Constants.FutureJump);
        var withJump = thousandHours * share + (1 - share) * Math.Log(2) / filter.Constants.JumpsPer1000Hours;
        return new(1000 * Math.Min(thousandHours, withJump), Math.Sqrt(variance));
    }
}
