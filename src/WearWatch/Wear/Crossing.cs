namespace WearWatch.Wear;

/// <summary>Draws the running hours in which a track reaches a limit.</summary>
/// <remarks>
/// <para>Of every account, in proportion to its weight: <c>rho = m_r + sqrt(P_rr) Z0</c>,
/// <c>l = m_l + (P_lr/P_rr)(rho - m_r) + sqrt(P_ll - P_lr^2/P_rr) Z1</c>, <c>dist = max(G(L) - l, 0)</c>. Then the hours R (in
/// thousands) with drift, twice: <c>R0 = dist/exp(rho) exp(-Z2 sqrt(q min(R0, 50)/3))</c>; uneven wear:
/// <c>R1 = R0 exp(Z3 min(sqrt(eta/max(R0, 0.02)), 1.5))</c>; and a jump yet to come after <c>s = -ln(U)/lambda</c>:
/// what is left of R1 then goes by in <c>(R1 - s)/exp(ln 2.8 + 0.25 Z4)</c>.</para>
/// <para>Every draw grows with the limit, so the forecast does.</para>
/// </remarks>
internal static class Crossing
{
    private const double LongestDrift = 50;
    private const double ShortestUneven = 0.02;
    private const double MostUneven = 1.5;

    /// <summary>The forecast of a track, in running hours from so many after its last reading.</summary>
    public static WearForecast Draw(WearTrack track, double limitPercent, WearFilter filter, double hoursLater)
    {
        Span<double> hours = stackalloc double[CrossingDraws.Count];
        var next = 0;
        var weight = 0.0;
        foreach (var clock in filter.Weigh(track))
        {
            var limit = clock.Clock.FromElongation(limitPercent);
            foreach (var account in clock.Accounts)
            {
                weight += clock.Weight * Math.Exp(account.LogWeight);
                var belief = account.BeliefAt(track.Hours, filter.Constants);
                // Systematic sampling: draw i falls to the account in whose share of the weight (i + 0.5)/1200 lies.
                for (; next < hours.Length && (next + 0.5) / CrossingDraws.Count < weight; next++)
                    hours[next] = Math.Max(0, 1000 * ThousandHours(belief, limit, next, filter.Constants) - hoursLater);
            }
        }

        // Rounding can leave the weights a hair short of one, never by half a draw: every draw has found its account.
        return Sorted(hours, limitPercent);
    }

    private static double ThousandHours(in Belief belief, double limit, int draw, WearConstants constants)
    {
        var deviation = Math.Sqrt(belief.LogRateVariance);
        var logRate = belief.LogRate + deviation * CrossingDraws.Rate[draw];
        var slope = belief.Covariance / belief.LogRateVariance;
        var wear = belief.Wear + slope * deviation * CrossingDraws.Rate[draw]
            + Math.Sqrt(Math.Max(0, belief.WearVariance - slope * belief.Covariance)) * CrossingDraws.Wear[draw];
        var distance = limit - wear;
        if (!(distance > 0)) return 0;

        var even = distance * Math.Exp(-logRate);
        var drifted = even;
        for (var i = 0; i < 2; i++)
            drifted = even
                * Math.Exp(-CrossingDraws.Drift[draw] * Math.Sqrt(constants.RateDrift * Math.Min(drifted, LongestDrift) / 3));
        var uneven = Math.Min(Math.Sqrt(constants.UnevenWear / Math.Max(drifted, ShortestUneven)), MostUneven);
        var hours = drifted * Math.Exp(CrossingDraws.Unevenness[draw] * uneven);

        var jump = CrossingDraws.JumpTime[draw] / constants.JumpsPer1000Hours;
        return jump < hours
            ? jump + (hours - jump)
            * Math.Exp(-constants.FutureJump - constants.FutureJumpDeviation * CrossingDraws.JumpSize[draw])
            : hours;
    }

    private static WearForecast Sorted(Span<double> hours, double limitPercent)
    {
        hours.Sort();
        var passed = 0;
        while (passed < hours.Length && hours[passed] <= 0) passed++;
        var percentiles = new double[99];
        for (var percent = 1; percent <= 99; percent++)
            percentiles[percent - 1] = Math.Min(WearForecast.HorizonHours, Quantile(hours, percent / 100.0));
        return new()
        {
            LimitPercent = limitPercent,
            ProbabilityPassed = (double)passed / hours.Length,
            PercentilesHours = percentiles,
        };
    }

    private static double Quantile(ReadOnlySpan<double> sorted, double share)
    {
        var at = share * (sorted.Length - 1);
        var below = (int)at;
        return sorted[below] + (at - below) * (sorted[Math.Min(below + 1, sorted.Length - 1)] - sorted[below]);
    }
}
