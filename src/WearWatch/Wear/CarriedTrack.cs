namespace WearWatch.Wear;

/// <summary>
/// A chain's track with what it made of each observation: what is stored, and carried on by one step a reading.
/// </summary>
/// <remarks>
/// It is carried on only where the chain's observations begin with just those that it has seen, and from the same prior. Anything
/// else (a correction, a reading told late, an event, another model) makes them differ, and the chain is followed anew. Either
/// way gives the same bits. Like its track it belongs to the constants with which it was made.
/// </remarks>
/// <param name="Track">The track.</param>
/// <param name="Observations">The observations that it has seen, judged.</param>
public sealed record CarriedTrack(WearTrack Track, IReadOnlyList<JudgedObservation> Observations)
{
    /// <summary>The track of a fitted chain before its first reading.</summary>
    public static CarriedTrack Start(FittedChain chain, WearPrior prior) => new(WearFilter.Start(chain, prior), []);

    /// <summary>Whether following a chain from its fitting would pass through this track.</summary>
    public bool LeadsTo(FittedChain chain, WearPrior prior) =>
        Track.Prior == WearFilter.Start(chain, prior).Prior
        && Observations.Select(o => o.Observation).SequenceEqual(chain.Observations.Take(Observations.Count));

    /// <summary>The track after the observations of a chain that it has not seen yet; itself when there are none.</summary>
    public CarriedTrack On(WearFilter filter, FittedChain chain)
    {
        if (Observations.Count == chain.Observations.Count) return this;
        var (track, judged) = (Track, new List<JudgedObservation>(Observations));
        foreach (var observation in chain.Observations.Skip(Observations.Count))
        {
            track = filter.Step(chain, track, observation);
            var view = WearNow.Of(track, filter);
            judged.Add(new(observation, view.ProbabilityLastMisread, view.ProbabilityRateRose)
            {
                RatePercentPer1000Hours = Math.Exp(view.LogRate),
                TrackPercent = view.ElongationPercent,
            });
            LookBack(judged, Hindsight.Of(track, filter));
        }

        return new(track, judged);
    }

    private static void LookBack(List<JudgedObservation> judged, double[] odds)
    {
        for (var back = 1; back < odds.Length; back++)
            judged[^(back + 1)] = judged[^(back + 1)] with { ProbabilityMisreadNow = odds[back] };
    }
}
