namespace WearWatch.Wear;

/// <summary>
/// Carries tracks on by readings: the multi-process filter run on every wear clock. Thread-safe; has no state of its own.
/// </summary>
/// <remarks>Sources: docs/references.md [16]; docs/method.md.</remarks>
/// <param name="constants">The constants of wear.</param>
public sealed class WearFilter(WearConstants constants)
{
    private const double RunInOverHours = 1000;
    private const double UnknownStartPercent = 1.2;
    private const double UnknownStartDeviationPercent = 1.2;

    /// <summary>The filter with the default constants.</summary>
    public static WearFilter Default { get; } = new(WearConstants.Default);

    /// <summary>The constants of wear.</summary>
    public WearConstants Constants { get; } = constants;

    /// <summary>The track of a chain after all its observations, which are in order of running hours.</summary>
    public WearTrack Follow(WearPrior prior, IEnumerable<Observation> observations) =>
        observations.Aggregate(WearTrack.AtFitting(prior), Step);

    /// <summary>The track of a fitted chain before its first reading.</summary>
    /// <remarks>
    /// Where nothing tells when the chain was fitted, its first reading alone says how far it was worn by then, and its run-in is
    /// taken to be over.
    /// </remarks>
    public static WearTrack Start(FittedChain chain, WearPrior prior) => chain.FittingKnown
        ? WearTrack.AtFitting(prior)
        : WearTrack.At(RunInOverHours, prior with
        {
            MeanStartPercent = UnknownStartPercent,
            StandardDeviationStartPercent = UnknownStartDeviationPercent,
        });

    /// <summary>The track of a fitted chain after one more of its observations.</summary>
    public WearTrack Step(FittedChain chain, WearTrack track, Observation observation) =>
        Step(track, observation with { HoursSinceFitting = HoursOnTrack(chain, observation.HoursSinceFitting) });

    /// <summary>The track of a fitted chain after its observations.</summary>
    public WearTrack Follow(FittedChain chain, WearPrior prior) => Follow(chain, prior, chain.Observations);

    /// <summary>
    /// What the earlier observations of a chain let a reading at some hours expect: mean and standard deviation of the wear.
    /// </summary>
    public (double Percent, double Deviation) Expect(FittedChain chain, WearPrior prior, double hours)
    {
        var track = Follow(chain, prior, chain.Observations.Where(o => o.HoursSinceFitting < hours));
        var view = WearNow.Of(track with { Hours = HoursOnTrack(chain, hours) }, this);
        return (view.ElongationPercent - chain.RunInLeftPercent(hours, Constants), view.ElongationDeviationPercent);
    }

    /// <summary>The track after one more observation, at hours not before the last.</summary>
    public WearTrack Step(WearTrack track, Observation observation)
    {
        var clocks = Clocks(track);
        var even = clocks[0];
        var steady = SteadyReading.PercentOf(observation, Constants);
        // An onset leaves the even clock when a reading first passes it: up to there both have seen the same.
        var passed = Constants.Onsets
            .Where(o => o.Percent < steady && clocks.All(c => c.OnsetPercent != o.Percent))
            .Select(o => even with { OnsetPercent = o.Percent });
        return track with
        {
            Readings = track.Readings + 1,
            Hours = observation.HoursSinceFitting,
            Clocks = [.. clocks.Concat(passed).Select(c => Step(c, observation, track.Readings))],
        };
    }

    /// <summary>
    /// ln of the probability density of all readings, for every onset of the constants in their order and then for the plant's
    /// own curve, where there is one.
    /// </summary>
    public double[] LogEvidence(WearTrack track)
    {
        var clocks = Clocks(track);
        var onsets = Constants.Onsets.Select(o => ClockFor(clocks, o).LogEvidence);
        return [.. Constants.Curve is null ? onsets : onsets.Append(CurveOf(clocks).LogEvidence)];
    }

    /// <summary>The odds of every clock given the readings, each with the accounts on it.</summary>
    public IReadOnlyList<WeighedClock> Weigh(WearTrack track)
    {
        var clocks = Clocks(track);
        var others = 1 - (Constants.Curve?.Weight ?? 0);
        var known = Constants.Onsets
            .Select(o => (Weight: others * o.Weight, Clock: WearClock.Of(o, Constants), Track: ClockFor(clocks, o))).ToList();
        if (Constants.Curve is { } curve) known.Add((curve.Weight, WearClock.Of(curve), CurveOf(clocks)));
        var logs = known.ConvertAll(c => Math.Log(c.Weight) + c.Track.LogEvidence);
        var best = logs.Max();
        var sum = logs.Sum(l => Math.Exp(l - best));
        return [.. known.Select((c, i) => new WeighedClock(Math.Exp(logs[i] - best) / sum, c.Clock, c.Track.Accounts))];
    }

    /// <summary>The distribution of the running hours left until a limit is reached.</summary>
    /// <param name="track">The track.</param>
    /// <param name="limitPercent">The limit in percent.</param>
    /// <param name="hoursLater">From how many running hours after the track's last reading the hours count.</param>
    public WearForecast Forecast(WearTrack track, double limitPercent, double hoursLater = 0) =>
        Constants.Spread.Apply(Crossing.Draw(track, limitPercent, this, hoursLater));

    /// <summary>
    /// The distribution of the running hours that a fitted chain has left from its last reading, used or held back.
    /// </summary>
    /// <param name="chain">The fitted chain.</param>
    /// <param name="track">Its track.</param>
    /// <param name="limitPercent">The limit in percent.</param>
    public WearForecast Forecast(FittedChain chain, WearTrack track, double limitPercent) =>
        Forecast(track, limitPercent, HoursOnTrack(chain, chain.RunningHours) - track.Hours);

    /// <summary>The hours left in closed form, for sorting and for small cards.</summary>
    public CrossingGlance Glance(WearTrack track, double limitPercent) => CrossingGlance.Of(track, limitPercent, this);

    private WearTrack Follow(FittedChain chain, WearPrior prior, IEnumerable<Observation> observations) =>
        observations.Aggregate(Start(chain, prior), (track, observation) => Step(chain, track, observation));

    private static double HoursOnTrack(FittedChain chain, double hours) => chain.FittingKnown ? hours : hours + RunInOverHours;

    private static ClockTrack ClockFor(IReadOnlyList<ClockTrack> clocks, OnsetNode onset) =>
        clocks.FirstOrDefault(c => c.OnsetPercent is not null && c.OnsetPercent == onset.Percent) ?? clocks[0];

    private static ClockTrack CurveOf(IReadOnlyList<ClockTrack> clocks) => clocks.Single(c => c.OnCurve);

    /// <summary>The clocks of a track; before its first reading by the prior as the constants correct it.</summary>
    private IReadOnlyList<ClockTrack> Clocks(WearTrack track)
    {
        if (track.Readings > 0) return track.Clocks;
        var atFitting = !(track.Hours > 0);
        var belief = Constants.Prior.Apply(track.Prior, atFitting);
        var even = new ClockTrack(null, 0, [Hypothesis.At(track.Hours, belief)]);
        if (Constants.Curve is not { } curve) return [even];
        var onCurve = Hypothesis.At(track.Hours, curve.Believed(belief, track.Prior, atFitting));
        return [even, new ClockTrack(null, 0, [onCurve]) { OnCurve = true }];
    }

    private ClockTrack Step(ClockTrack clock, Observation observation, int number)
    {
        var scale = clock.OnCurve ? WearClock.Of(Constants.Curve!) : WearClock.At(clock.OnsetPercent, Constants);
        var reading = SteadyReading.Of(observation, scale, Constants);
        Hypothesis[] before = [.. clock.Accounts];
        var after = Mixture.Weigh(before, reading, observation.HoursSinceFitting, number, Constants, out var logEvidence);
        return clock with { LogEvidence = clock.LogEvidence + logEvidence + reading.LogJacobian, Accounts = after };
    }
}
