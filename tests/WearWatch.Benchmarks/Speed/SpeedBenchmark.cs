using WearWatch.Benchmarks.Rivals;
using WearWatch.Learning;
using WearWatch.Trends;

namespace WearWatch.Benchmarks.Speed;

/// <summary>How long the everyday work takes, next to R's <c>lm</c> over the same chains; false when a bound is broken.</summary>
internal static class SpeedBenchmark
{
    private const int Chains = 10_000;
    private const int Readings = 24;
    private const double LimitPercent = 3;

    private static readonly TimeSpan ThreeLimitsBound = TimeSpan.FromMilliseconds(5);
    private static readonly TimeSpan OneReadingBound = TimeSpan.FromMilliseconds(1);
    private static readonly TimeSpan TwoCoresBound = TimeSpan.FromSeconds(60);

    public static bool Run(TextWriter output)
    {
        var chains = SimulatedChain.Many(Chains, Readings, seed: 1);
        Say(output, $"{Chains:N0} chains x {Readings} readings; processor time");
        var lmInR = Lines(output, chains);
        Assessments(output, chains, lmInR);
        Fleet(output, chains[..1_000]);
        Fleet(output, chains);
        return Tracks(output, SimulatedChain.Many(Chains, readings: 40, seed: 2));
    }

    private static void Assessments(TextWriter output, FleetChain[] chains, TimeSpan? lmInR)
    {
        var assessments = TrackSpeed.ForAssessments(chains);
        Say(output, $"  assessed from raw readings      {assessments.TotalMilliseconds,10:0} ms   "
            + $"{assessments.TotalMilliseconds / chains.Length:0.00} ms a chain");
        if (lmInR is { } r)
            Say(output, $"                                               {assessments / r:0.0} times what lm alone takes in R");
    }

    private static bool Tracks(TextWriter output, FleetChain[] chains)
    {
        var threeLimits = TrackSpeed.ForThreeLimits(chains[..500]);
        var oneReading = TrackSpeed.ForOneReading(chains[..500]);
        var twoCores = TrackSpeed.ForAssessmentsOnTwoCores(chains);
        Say(output, $"chains of 40 readings");
        Say(output, $"  track and three limits          {threeLimits.TotalMilliseconds,10:0.00} ms   bound "
            + $"{ThreeLimitsBound.TotalMilliseconds:0} ms");
        Say(output, $"  one more reading                {oneReading.TotalMilliseconds,10:0.00} ms   bound "
            + $"{OneReadingBound.TotalMilliseconds:0} ms");
        Say(output, $"  {chains.Length:N0} assessed on two cores    {twoCores.TotalSeconds,10:0.0} s    bound "
            + $"{TwoCoresBound.TotalSeconds:0} s on the wall");
        return threeLimits < ThreeLimitsBound && oneReading < OneReadingBound && twoCores < TwoCoresBound;
    }

    private static TimeSpan? Lines(TextWriter output, FleetChain[] chains)
    {
        var points = chains.Select(c => (
            Hours: c.Observations.Select(o => o.HoursSinceFitting).ToArray(),
            Elongations: c.Observations.Select(o => o.ElongationPercent).ToArray())).ToArray();
        var slopes = new double[points.Length];
        var lines = Measured.Quickest(5, () =>
        {
            for (var i = 0; i < points.Length; i++)
                slopes[i] = ((TrendFit<StraightLine>.Fitted)StraightLine.Fit(points[i].Hours, points[i].Elongations)).Trend.Slope;
        });
        var crossings = Measured.Quickest(3, () =>
        {
            foreach (var (hours, elongations) in points)
                InversePrediction.Of(
                    ((TrendFit<StraightLine>.Fitted)StraightLine.Fit(hours, elongations)).Trend, LimitPercent, confidence: 0.9);
        });
        var robust = Measured.Quickest(2, () =>
        {
            foreach (var (hours, elongations) in points) TukeyLine.Fit(hours, elongations, scaleFloor: 0.03);
        });
        Say(output, $"  least-squares lines             {lines.TotalMilliseconds,10:0.0} ms");
        Say(output, $"  with Fieller's interval         {crossings.TotalMilliseconds,10:0.0} ms");
        Say(output, $"  robust lines (Tukey)            {robust.TotalMilliseconds,10:0.0} ms");

        if (LeastSquaresInR.Run(chains) is not { } r)
        {
            Say(output, $"  R is not installed: no comparison (on Debian: apt-get install r-base-core)");
            return null;
        }

        var difference = chains.Zip(slopes, (c, slope) => Math.Abs(slope / r.Slopes[c.Card.Name] - 1)).Max();
        Say(output, $"  R, lm in a loop                 {r.Lm.TotalMilliseconds,10:0.0} ms   {r.Lm / lines:N0} times ours; "
            + $"slopes agree to {difference:0.0e+0}");
        Say(output, $"  R, its bare engine .lm.fit      {r.BareEngine.TotalMilliseconds,10:0.0} ms   {r.BareEngine / lines:N0} "
            + $"times ours");
        return r.Lm;
    }

    private static void Fleet(TextWriter output, FleetChain[] chains)
    {
        var trained = (FleetTrainingOutcome.Trained)FleetTraining.Train(chains, seed: 1);
        var training = Measured.Quickest(1, () => FleetTraining.Train(chains, seed: 1));
        var priors = Measured.Quickest(3, () =>
        {
            foreach (var chain in chains) trained.Model.PriorFor(chain.Card);
        });
        Say(output, $"fleet model from {chains.Length:N0} chains");
        Say(output, $"  training with cross-validation  {training.TotalMilliseconds,10:0} ms");
        Say(output, $"  a chain's prior                 {priors.TotalMicroseconds / chains.Length,10:0.0} us   trees in use: "
            + $"{trained.Model.UsesTrees}");
    }

    private static void Say(TextWriter output, string text) => output.WriteLine(text);
}
