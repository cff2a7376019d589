namespace WearWatch.Wear;

/// <summary>A track told in the terms of the chain: elongation and wear rate as they are now, and what is doubted.</summary>
/// <param name="ElongationPercent">Steady elongation at the last reading, in percent.</param>
/// <param name="ElongationDeviationPercent">Standard deviation of the elongation, in percent.</param>
/// <param name="LogRate">Mean of ln(wear rate now), acceleration included; the rate in percent per 1,000 h.</param>
/// <param name="LogRateDeviation">Standard deviation of ln(wear rate now).</param>
/// <param name="ProbabilityLastMisread">Probability that the last reading is a gross error.</param>
/// <param name="ProbabilityRateRose">Probability that the rate jumped up within the last six readings.</param>
/// <param name="ProbabilityAccelerating">Probability that the onset of acceleration has been passed.</param>
public readonly record struct WearNow(
    double ElongationPercent, double ElongationDeviationPercent, double LogRate, double LogRateDeviation,
    double ProbabilityLastMisread, double ProbabilityRateRose, double ProbabilityAccelerating)
{
    /// <summary>How many readings back a jump still counts as news.</summary>
    public const int RecentReadings = 6;

    /// <summary>The view of a track.</summary>
    public static WearNow Of(WearTrack track, WearFilter filter)
    {
        double wear = 0, wear2 = 0, rate = 0, rate2 = 0, misread = 0, rose = 0, accelerating = 0;
        foreach (var (clockWeight, clock, accounts) in filter.Weigh(track))
        {
            foreach (var account in accounts)
            {
                var weight = clockWeight * Math.Exp(account.LogWeight);
                var belief = account.BeliefAt(track.Hours, filter.Constants);
                var elongation = clock.ToElongation(belief.Wear);
                // On the clock de = dl / J: variance by 1/J^2, rate by 1/J.
                var logSlope = clock.LogSlope(elongation);
                var logRate = belief.LogRate - logSlope;
                wear += weight * elongation;
                wear2 += weight * (elongation * elongation + belief.WearVariance * Math.Exp(-2 * logSlope));
                rate += weight * logRate;
                rate2 += weight * (logRate * logRate + belief.LogRateVariance);
                if (account.LastMisread) misread += weight;
                if (account.JumpWasUp && account.JumpReading >= track.Readings - RecentReadings) rose += weight;
                if (elongation > clock.OnsetPercent) accelerating += weight;
            }
        }

        return new(
            wear, Math.Sqrt(Math.Max(0, wear2 - wear * wear)), rate, Math.Sqrt(Math.Max(0, rate2 - rate * rate)), misread, rose,
            accelerating);
    }
}
