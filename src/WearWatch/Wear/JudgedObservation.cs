namespace WearWatch.Wear;

/// <summary>What the track makes of one observation, as it came in.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="ProbabilityMisread">Probability that it is a gross error.</param>
/// <param name="ProbabilityRateRose">
/// Probability that the wear rate jumped up within the last six readings up to this one.
/// </param>
public sealed record JudgedObservation(Observation Observation, double ProbabilityMisread, double ProbabilityRateRose)
{
    /// <summary>
    /// Probability that it is a gross error by all that is known now: the readings after it, at most seven, have their say.
    /// </summary>
    public double ProbabilityMisreadNow { get; init; } = ProbabilityMisread;

    /// <summary>Whether it was believed when it came and is in doubt by what came after.</summary>
    public bool IsDoubtedInHindsight => ProbabilityMisread <= 0.5 && ProbabilityMisreadNow > 0.5;

    /// <summary>Wear rate as it was believed after this reading, in percent per 1,000 running hours.</summary>
    public double RatePercentPer1000Hours { get; init; }

    /// <summary>Elongation by the track after this reading, in percent.</summary>
    public double TrackPercent { get; init; }
}
