using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>Questions to the bench, written as the pages' addresses.</summary>
internal static class Bench
{
    public static Asked Ask(string query) => BenchAddress.Of(new Uri("http://localhost/x?" + query)).Ask();

    public static GaugeSheet Gauge(string query) =>
        Assert.IsType<BenchAnswer<GaugeSheet>.Answered>(GaugeBench.Answer(Ask(query))).Sheet;

    public static LimitSheet Limit(string query) =>
        Assert.IsType<BenchAnswer<LimitSheet>.Answered>(LimitBench.Answer(Ask(query))).Sheet;

    public static DriveSheet Drive(string query) =>
        Assert.IsType<BenchAnswer<DriveSheet>.Answered>(DriveBench.Answer(Ask(query))).Sheet;

    /// <summary>The fields that were refused, in order.</summary>
    public static IEnumerable<string> Refused<T>(BenchAnswer<T> answer) =>
        Assert.IsType<BenchAnswer<T>.Refused>(answer).Refusals.Select(r => r.Field);
}
