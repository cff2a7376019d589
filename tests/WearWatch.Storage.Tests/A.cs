using WearWatch.Chains;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

/// <summary>Rows with defaults, so that a test states only what it is about.</summary>
internal static class A
{
    private static int made;

    public static ReadingRow Reading(
        ChainRow chain, double counterH = 100, DateTimeOffset? takenAt = null, long? corrects = null, bool withdraws = false,
        ReadingStanding standing = ReadingStanding.Accepted) => new()
        {
            ChainId = chain.Id,
            Key = $"reading {Interlocked.Increment(ref made)}",
            Fingerprint = "",
            CounterH = counterH,
            TakenAt = takenAt,
            Pitches = 40,
            LengthMm = 1020,
            CorrectsId = corrects,
            Withdraws = withdraws,
            Standing = standing,
        };

    public static EventRow Event(
        ChainRow chain, ChainEventKind kind = ChainEventKind.Oiling, long? corrects = null, bool withdraws = false) => new()
        {
            ChainId = chain.Id,
            Key = $"event {Interlocked.Increment(ref made)}",
            Fingerprint = "",
            Kind = kind,
            CorrectsId = corrects,
            Withdraws = withdraws,
        };

    public static ForecastRow Forecast(ChainRow chain) => new()
    {
        ChainId = chain.Id,
        ModelVersion = "broad prior",
        LimitSource = "",
        PercentilesH = [.. Enumerable.Range(1, 99).Select(i => i / 3.0)],
        IsLatest = true,
    };
}
