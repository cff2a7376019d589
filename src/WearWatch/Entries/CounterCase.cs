using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Entries;

/// <summary>An entry whose counter is weighed, with what is known about the hours.</summary>
/// <param name="Entry">The entry, with a counter.</param>
/// <param name="Clock">What is known of the chain's own hours.</param>
/// <param name="Expected">What its counter was expected to show.</param>
/// <param name="Others">The clocks of other chains whose counter it may be.</param>
internal sealed record CounterCase(
    Reading Entry, CounterClock Clock, ExpectedCounter Expected, IReadOnlyList<CounterClock> Others)
{
    /// <summary>The counter as told, in hours.</summary>
    public double ToldH => Entry.Counter!.Value.Hours;

    /// <summary>The entry as it would be with another counter.</summary>
    public Reading With(double counterH) => Entry with { Counter = new RunningHours(counterH) };

    /// <summary>The entry with the counter that was expected, for slips that do not say what it was.</summary>
    public Reading AsExpected => With(Math.Round(Expected.AboutH));
}
