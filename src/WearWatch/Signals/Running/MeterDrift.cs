using WearWatch.Running;

namespace WearWatch.Signals.Running;

/// <summary>How the hours by signals differ from those by the hour meter that people read.</summary>
/// <param name="From">The earlier reading of the meter.</param>
/// <param name="To">The later one.</param>
/// <param name="MeterHours">Hours by the meter.</param>
/// <param name="SignalHours">Hours by signals.</param>
public sealed record MeterDrift(DateTimeOffset From, DateTimeOffset To, double MeterHours, double SignalHours)
{
    private const double EnoughCover = 0.9;
    private const double EnoughHours = 24;

    /// <summary>More than this asks for a look at both, in percent. Common practice.</summary>
    public const double AttentionPercent = 3;

    /// <summary>By how much the signals tell more hours than the meter, in percent.</summary>
    public double Percent => 100 * (SignalHours - MeterHours) / MeterHours;

    /// <summary>
    /// The drift over the longest time up to the newest reading of the meter that signals cover; null when none do.
    /// </summary>
    /// <param name="meter">Readings of the meter by time.</param>
    /// <param name="record">The hours by signals.</param>
    public static MeterDrift? Of(IReadOnlyList<(DateTimeOffset At, double Hours)> meter, RunningLog record)
    {
        if (meter.Count == 0) return null;
        var last = meter[^1];
        foreach (var first in meter)
        {
            var risen = last.Hours - first.Hours;
            if (first.At >= last.At || risen < EnoughHours || record.CoverOf(first.At, last.At) < EnoughCover) continue;
            return new MeterDrift(first.At, last.At, risen, record.Between(first.At, last.At, (_, _) => 0));
        }

        return null;
    }
}
