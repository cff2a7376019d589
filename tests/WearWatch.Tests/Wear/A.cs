using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Tests.Wear;

/// <summary>Test data with ordinary values, so that a test states only what it is about.</summary>
internal static class A
{
    public const double PitchMm = 25.4;

    public static readonly DateTimeOffset Monday = new(2026, 3, 2, 0, 0, 0, TimeSpan.Zero);

    public static ChainCard Card(double? fittedCounter = 0, DateTimeOffset? fittedAt = null, double? limitPercent = null) => new()
    {
        Name = "K1",
        PitchMm = PitchMm,
        FittedAt = fittedAt,
        LimitPercent = limitPercent,
        FittedCounter = fittedCounter is { } f ? new RunningHours(f) : null,
    };

    /// <summary>A caliper reading over 40 pitches of an elongation: scatter 0.012 %.</summary>
    public static Reading Reading(
        double? counter, double percent, DateTimeOffset? at = null, string place = "", int pitches = 40, double? lengthMm = null,
        int? strand = null) => new()
        {
            Chain = "K1",
            Counter = counter is { } c ? new RunningHours(c) : null,
            TakenAt = at,
            Tool = Tool.Caliper,
            Place = place,
            Strand = strand,
            Pitches = pitches,
            LengthMm = lengthMm ?? pitches * PitchMm * (1 + percent / 100),
        };

    /// <summary>Readings of a chain that wears evenly from 0.2 %, at the counters given.</summary>
    public static Reading[] Readings(double percentPer1000Hours, params IEnumerable<double> counters) =>
        [.. counters.Select(c => Reading(c, 0.2 + percentPer1000Hours * c / 1000))];

    public static ChainEvent Replacement(double? counter, DateTimeOffset? at = null) =>
        Event(ChainEventKind.Replacement, counter, counter, at);

    public static ChainEvent Reset(double? before, double after = 0, DateTimeOffset? at = null) =>
        Event(ChainEventKind.MeterReset, before, after, at);

    public static ChainEvent Event(ChainEventKind kind, double? before, double? after, DateTimeOffset? at = null) => new()
    {
        Chain = "K1",
        Kind = kind,
        At = at,
        CounterBefore = Hours(before),
        CounterAfter = Hours(after),
    };

    private static RunningHours? Hours(double? hours) => hours is { } h ? new RunningHours(h) : null;
}
