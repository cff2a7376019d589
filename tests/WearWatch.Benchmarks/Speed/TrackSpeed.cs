using System.Diagnostics;
using WearWatch.Gauging;
using WearWatch.Learning;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Speed;

/// <summary>Time of tracks, forecasts and whole assessments.</summary>
internal static class TrackSpeed
{
    private const int SpanPitches = 40;
    private static readonly double[] Limits = [1.5, 2.0, 3.0];
    private static readonly DateTimeOffset Now = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Processor time of a chain's track and its forecast to three limits.</summary>
    public static TimeSpan ForThreeLimits(FleetChain[] chains) => Measured.Quickest(3, () =>
    {
        foreach (var chain in chains)
        {
            var track = WearFilter.Default.Follow(WearPrior.Broad, chain.Observations);
            foreach (var limit in Limits) WearFilter.Default.Forecast(track, limit);
        }
    }) / chains.Length;

    /// <summary>Processor time of a chain's last reading: a step of its stored track and a new forecast.</summary>
    public static TimeSpan ForOneReading(FleetChain[] chains)
    {
        var stored = chains
            .Select(c => (Track: WearFilter.Default.Follow(WearPrior.Broad, c.Observations.SkipLast(1)),
                Last: c.Observations[^1])).ToArray();
        return Measured.Quickest(3, () =>
        {
            foreach (var (track, last) in stored)
                WearFilter.Default.Forecast(WearFilter.Default.Step(track, last), Limits[^1]);
        }) / chains.Length;
    }

    /// <summary>Processor time of all chains from raw readings to condition and notices, one after the other.</summary>
    public static TimeSpan ForAssessments(FleetChain[] chains)
    {
        var readings = chains.Select(ReadingsOf).ToArray();
        return Measured.Once(() => AssessFirst(100), () => AssessFirst(chains.Length));

        void AssessFirst(int count)
        {
            for (var i = 0; i < count; i++) Assess(chains[i], readings[i]);
        }
    }

    /// <summary>Time on the wall of the same on two cores.</summary>
    public static TimeSpan ForAssessmentsOnTwoCores(FleetChain[] chains)
    {
        var readings = chains.Select(ReadingsOf).ToArray();
        var watch = Stopwatch.StartNew();
        Parallel.For(0, chains.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => Assess(chains[i], readings[i]));
        return watch.Elapsed;
    }

    private static void Assess(FleetChain chain, Reading[] readings) =>
        Assessment.Of(chain.Card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, Now);

    private static Reading[] ReadingsOf(FleetChain chain) =>
    [
        .. chain.Observations.Select(o => new Reading
        {
            Chain = chain.Card.Name,
            Counter = new RunningHours(o.HoursSinceFitting),
            Tool = Tool.Caliper,
            Pitches = SpanPitches,
            LengthMm = SpanPitches * chain.Card.PitchMm * (1 + o.ElongationPercent / 100),
        })
    ];
}
