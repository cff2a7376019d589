using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Running;
using WearWatch.Trends;

namespace WearWatch.Lubrication;

/// <summary>Whether a chain's automatic lubricator still does its work, by its pulses.</summary>
/// <param name="Pulses">Pulses recorded.</param>
/// <param name="UsualHours">Running hours from one pulse to the next, the middle of those recorded.</param>
/// <param name="HoursSinceLast">Running hours since the last pulse, or since the last that gave oil.</param>
/// <param name="IsBlocked">Whether pulses come but give no oil.</param>
public sealed record LubricatorWatch(int Pulses, double UsualHours, double HoursSinceLast, bool IsBlocked)
{
    /// <summary>Fewer pulses show no rhythm.</summary>
    public const int FewestPulses = 4;

    /// <summary>How many of its pulses are missing by now.</summary>
    public double Missed => HoursSinceLast / UsualHours - 1;

    /// <summary>The watch of a chain; null where no lubricator gives pulses, or too few for a rhythm.</summary>
    /// <remarks>
    /// A pulse that is told to have given 0 ml counts as missing: the pump strokes and no oil comes, the line is blocked.
    /// </remarks>
    /// <param name="events">The chain's events in the order in which they happened.</param>
    /// <param name="counterNow">
    /// What its hour counter shows now; null when it is not known: then dates and the calendar serve.
    /// </param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which it is asked.</param>
    public static LubricatorWatch? Of(
        IReadOnlyList<ChainEvent> events, RunningHours? counterNow, ProductionCalendar calendar, DateTimeOffset now)
    {
        List<int> pulses = [.. Enumerable.Range(0, events.Count).Where(i => IsPulse(events[i]))];
        List<int> oiled = pulses.FindAll(i => events[i].BroughtOil);
        if (oiled.Count < FewestPulses) return null;
        double[] gaps =
        [
            .. oiled.Zip(oiled.Skip(1), (a, b) => Since(a, CounterOf(events[b]), events[b].At ?? now)).OfType<double>()
                .Where(h => h > 0),
        ];
        if (gaps.Length < FewestPulses - 1 || Since(oiled[^1], counterNow, now) is not { } since) return null;
        return new LubricatorWatch(pulses.Count, Median.Of(gaps), since, pulses[^1] > oiled[^1]);

        double? Since(int from, RunningHours? counter, DateTimeOffset at) =>
            new LastOiling(Phrase.None, events[from].At, CounterOf(events[from]), from).HoursUntil(events, counter, calendar, at);
    }

    /// <summary>Whether it is to be looked at.</summary>
    /// <param name="pulsesMissed">So many pulses may be missing.</param>
    public bool IsSilent(double pulsesMissed) => Missed >= pulsesMissed;

    private static bool IsPulse(ChainEvent happened) =>
        happened is { Kind: ChainEventKind.Oiling, Oil.Method: OilMethod.Lubricator };

    private static RunningHours? CounterOf(ChainEvent happened) => happened.CounterAfter ?? happened.CounterBefore;
}
