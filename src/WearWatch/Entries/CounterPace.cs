using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Entries;

/// <summary>
/// How a counter usually goes from reading to reading: enough to pass an ordinary row of a file by, of which there may be a
/// million.
/// Whatever does not fit here is weighed by <see cref="CounterClock"/>.
/// </summary>
public sealed class CounterPace
{
    private const double WithinShare = 0.2;
    private const double WithinHours = 24;
    private const double WithinFactor = 2;
    private const double CalendarHoursThatTell = 500;

    private Reading? last;
    private double counted;
    private double planned;
    private double logGaps;
    private int gaps;
    private double plannedOfLook;

    /// <summary>Whether a counter goes on as it did so far.</summary>
    public bool Fits(Reading reading, ProductionCalendar calendar)
    {
        plannedOfLook = 0;
        if (last is not { Counter: { } from } || reading.Counter is not { } to || to < from) return false;
        var hours = (to - from).Hours;
        if (last.TakenAt is { } before && reading.TakenAt is { } now)
        {
            if (now < before) return false;
            plannedOfLook = calendar.Between(before, now).Hours;
            var about = plannedOfLook * (planned > CalendarHoursThatTell ? counted / planned : 1);
            return hours <= (now - before).TotalHours + WithinHours
                && Math.Abs(hours - about) <= Math.Max(WithinHours, WithinShare * about);
        }

        var usual = gaps == 0 ? 0 : Math.Exp(logGaps / gaps);
        return hours <= 1 || (hours >= usual / WithinFactor && hours <= usual * WithinFactor);
    }

    /// <summary>Goes on to a reading that is believed.</summary>
    public void Add(Reading reading)
    {
        if (reading.Counter is not { } to) return;
        if (last?.Counter is { } from && to > from)
        {
            if (plannedOfLook > 0) (counted, planned) = (counted + (to - from).Hours, planned + plannedOfLook);
            (logGaps, gaps) = (logGaps + Math.Log((to - from).Hours), gaps + 1);
        }

        (last, plannedOfLook) = (reading, 0);
    }
}
