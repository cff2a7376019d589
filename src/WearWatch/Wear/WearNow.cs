namespace WearWatch.Wear;

/// <summary>A track told in the terms of the chain: elongation and wear rate as they are now, and what is doubted.</summary>
public readonly record struct WearNow
{
    /// <summary>Steady elongation at the last reading, in percent.</summary>
    public required double ElongationPercent { get; init; }

    /// <summary>Standard deviation of the elongation, in percent.</summary>
    public required double ElongationDeviationPercent { get; init; }

    /// <summary>Mean of ln(wear rate now), acceleration included; the rate in percent per 1,000 h.</summary>
    public required double LogRate { get; init; }

    /// <summary>Standard deviation of ln(wear rate now).</summary>
    public required double LogRateDeviation { get; init; }

    /// <summary>Probability that the last reading is a gross error.</summary>
    public required double ProbabilityLastMisread { get; init; }

    /// <summary>Probability that the rate jumped up within the last six readings.</summary>
    public required double ProbabilityRateRose { get; init; }

    /// <summary>Probability that the onset of acceleration has been passed.</summary>
    public required double ProbabilityAccelerating { get; init; }

    /// <summary>How many readings back a jump still counts as news.</summary>
    public const int RecentReadings = 6;

    /// <summary>Beyond this the far tail makes mean and deviation, and quantiles tell what is known. In percent.</summary>
    private const double MomentsTellBelowPercent = 1;

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

        var deviation = Math.Sqrt(Math.Max(0, wear2 - wear * wear));
        if (deviation > MomentsTellBelowPercent)
        {
            var spread = TrackSpread.At(filter, track, track.Hours);
            (wear, deviation) = (spread.Quantile(0.5), spread.HalfWidth);
        }

        return new WearNow
        {
            ElongationPercent = wear,
            ElongationDeviationPercent = deviation,
            LogRate = rate,
            LogRateDeviation = Math.Sqrt(Math.Max(0, rate2 - rate * rate)),
            ProbabilityLastMisread = misread,
            ProbabilityRateRose = rose,
            ProbabilityAccelerating = accelerating,
        };
    }
}
