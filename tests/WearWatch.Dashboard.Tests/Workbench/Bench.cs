using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>Questions to the bench, written as the pages' addresses.</summary>
internal static class Bench
{
    public static Asked Ask(string query) => BenchAddress.Of(new Uri("http://localhost/x?" + query)).Ask();

    public static GaugeCalculation Gauge(string query) =>
        Assert.IsType<BenchAnswer<GaugeCalculation>.Answered>(GaugeBench.Answer(Ask(query))).Result;

    public static LimitCalculation Limit(string query) =>
        Assert.IsType<BenchAnswer<LimitCalculation>.Answered>(LimitBench.Answer(Ask(query))).Result;

    public static DriveCalculation Drive(string query) =>
        Assert.IsType<BenchAnswer<DriveCalculation>.Answered>(DriveBench.Answer(Ask(query))).Result;

    /// <summary>The fields that were refused, in order.</summary>
    public static IEnumerable<string> Refused<T>(BenchAnswer<T> answer) =>
        Assert.IsType<BenchAnswer<T>.Refused>(answer).Refusals.Select(r => r.Field);
}
