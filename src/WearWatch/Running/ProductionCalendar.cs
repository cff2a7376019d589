using System.Collections.Concurrent;

namespace WearWatch.Running;

/// <summary>When a line runs, so that running hours left become a date and a stretch of days becomes running hours.</summary>
/// <remarks>
/// Planned production is the weekly shifts less the holidays; of every planned hour the share <see cref="Utilisation"/> is run.
/// Shifts begin and end by the wall clock of <see cref="TimeZone"/>, so the night on which the clock goes on is an hour shorter.
/// Shifts are taken as they stand: two that overlap count twice, so the plant's settings are checked before they get here.
/// </remarks>
public sealed class ProductionCalendar
{
    /// <summary>Beyond this the answer is "not in sight": no plan reaches so far, and dates would overflow.</summary>
    private const int HorizonDays = 366 * 60;

    /// <summary>So many days are kept as worked out; a plant's records and plans have fewer.</summary>
    private const int MostDaysKept = 366 * 100;

    private readonly ConcurrentDictionary<DateOnly, PlannedDay> days = new();
    private readonly ConcurrentDictionary<DateOnly, TimeSpan> months = new();
    private readonly ILookup<DayOfWeek, Shift> shifts;
    private readonly double plannedHoursPerWeek;
    private RunningLog record = RunningLog.Empty;

    /// <summary>Makes a calendar.</summary>
    /// <param name="shifts">The weekly shifts; empty means round the clock.</param>
    /// <param name="utilisation">Share of the planned hours that is really run, above 0 and at most 1.</param>
    /// <param name="timeZone">The plant's time zone.</param>
    /// <param name="holidays">Plant-time dates on which no shift begins.</param>
    /// <exception cref="ArgumentOutOfRangeException">The utilisation is not in (0, 1].</exception>
    public ProductionCalendar(
        IReadOnlyList<Shift> shifts, double utilisation = 1, TimeZoneInfo? timeZone = null, IEnumerable<DateOnly>? holidays =
            null)
    {
        if (utilisation is not (> 0 and <= 1))
            throw new ArgumentOutOfRangeException(
                nameof(utilisation), utilisation, "Utilisation is a share above 0 and at most 1.");
        Shifts = shifts.Count > 0
            ? [.. shifts]
            : [.. Enum.GetValues<DayOfWeek>().Select(d => new Shift(d, default, TimeSpan.FromHours(24)))];
        Utilisation = utilisation;
        TimeZone = timeZone ?? TimeZoneInfo.Utc;
        Holidays = (holidays ?? []).ToHashSet();
        this.shifts = Shifts.ToLookup(s => s.Day);
        plannedHoursPerWeek = Shifts.Sum(s => s.Length.TotalHours);
    }

    /// <summary>Round the clock, every day, always running.</summary>
    public static ProductionCalendar AlwaysRunning { get; } = new([]);

    /// <summary>The weekly shifts, never empty.</summary>
    public IReadOnlyList<Shift> Shifts { get; }

    /// <summary>Share of the planned hours that is really run, above 0 and at most 1.</summary>
    public double Utilisation { get; }

    /// <summary>The time zone in which the shifts are meant.</summary>
    public TimeZoneInfo TimeZone { get; }

    /// <summary>Plant-time dates on which no shift begins.</summary>
    public IReadOnlySet<DateOnly> Holidays { get; }

    /// <summary>The running hours of a week without holidays.</summary>
    public RunningHours PerWeek => new(plannedHoursPerWeek * Utilisation);

    /// <summary>
    /// This calendar for a line of which is known when it really ran: that takes the place of the plan where it tells.
    /// </summary>
    public ProductionCalendar Knowing(RunningLog ran)
    {
        if (ran.Stretches.Count == 0) return this;
        var knowing = (ProductionCalendar)MemberwiseClone();
        knowing.record = ran;
        return knowing;
    }

    /// <summary>
    /// The running hours between two moments, recorded or else to be expected; zero when <paramref name="to"/> is not later.
    /// </summary>
    public RunningHours Between(DateTimeOffset from, DateTimeOffset to) => to <= from ? RunningHours.Zero
        : record.Stretches.Count == 0 ? new RunningHours(Planned(from, to))
        : new RunningHours(record.Between(from, to, Planned));

    private double Planned(DateTimeOffset from, DateTimeOffset to)
    {
        var planned = TimeSpan.Zero;
        var date = FirstDayToLookAt(from);
        while (DayOf(date) is var day && day.Start < to)
        {
            if (BeginsMonth(date, from) && DayOf(date.AddMonths(1).AddDays(1)).Start <= to)
            {
                planned += MonthOf(date);
                date = date.AddMonths(1);
                continue;
            }

            foreach (var (start, end) in day.Stretches)
                planned += Stretch(Later(start, from), Earlier(end, to));

            date = date.AddDays(1);
        }

        return planned.TotalHours * Utilisation;
    }

    /// <summary>
    /// The moment at which <paramref name="ahead"/> running hours from <paramref name="from"/> will have been run.
    /// </summary>
    /// <returns>
    /// The moment; <paramref name="from"/> itself for nothing ahead; null when it lies more than 60 years ahead.
    /// </returns>
    public DateTimeOffset? After(DateTimeOffset from, RunningHours ahead)
    {
        if (!(ahead.Hours > 0)) return from;
        var left = ahead.Hours / Utilisation;
        if (left > plannedHoursPerWeek * HorizonDays / 7) return null;

        var first = FirstDayToLookAt(from);
        var date = first;
        while (date.DayNumber - first.DayNumber <= HorizonDays)
        {
            if (BeginsMonth(date, from) && MonthOf(date).TotalHours is var month && month < left)
            {
                left -= month;
                date = date.AddMonths(1);
                continue;
            }

            foreach (var (start, end) in DayOf(date).Stretches)
            {
                var begin = Later(start, from);
                var run = (end - begin).TotalHours;
                if (run <= 0) continue;
                if (left <= run) return TimeZoneInfo.ConvertTime(begin + TimeSpan.FromHours(left), TimeZone);
                left -= run;
            }

            date = date.AddDays(1);
        }

        return null;
    }

    /// <summary>A day of the plan. It is asked for again and again, and the time zone's rules take long.</summary>
    private PlannedDay DayOf(DateOnly date)
    {
        if (days.TryGetValue(date, out var kept)) return kept;
        var day = new PlannedDay(AtPlant(date.ToDateTime(default)), Holidays.Contains(date)
            ? []
            : [.. shifts[date.DayOfWeek].OrderBy(s => s.Start)
                .Select(s => (AtPlant(date.ToDateTime(s.Start)), AtPlant(date.ToDateTime(s.Start) + s.Length)))]);
        if (days.Count < MostDaysKept) days.TryAdd(date, day);
        return day;
    }

    /// <summary>Whether a month begins on a day of which no shift begins before a moment.</summary>
    private bool BeginsMonth(DateOnly date, DateTimeOffset moment) => date.Day == 1 && DayOf(date).Start >= moment;

    /// <summary>The planned hours of the shifts that begin in a month: years are counted by months, not by days.</summary>
    private TimeSpan MonthOf(DateOnly first)
    {
        if (months.TryGetValue(first, out var kept)) return kept;
        var hours = TimeSpan.Zero;
        for (var date = first; date.Month == first.Month; date = date.AddDays(1))
        {
            foreach (var (start, end) in DayOf(date).Stretches)
                hours += Stretch(start, end);
        }

        months.TryAdd(first, hours);
        return hours;
    }

    /// <summary>The day before, since yesterday's night shift may still run.</summary>
    private DateOnly FirstDayToLookAt(DateTimeOffset moment) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, TimeZone).Date).AddDays(-1);

    private DateTimeOffset AtPlant(DateTime wall)
    {
        // What would fall into the hour that spring leaves out falls on the hour after it.
        if (TimeZone.IsInvalidTime(wall)) wall = wall.AddHours(1);
        return new DateTimeOffset(wall, TimeZone.GetUtcOffset(wall));
    }

    private static TimeSpan Stretch(DateTimeOffset start, DateTimeOffset end) => end > start ? end - start : TimeSpan.Zero;

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;

    private readonly record struct PlannedDay(
        DateTimeOffset Start, (DateTimeOffset Start, DateTimeOffset End)[] Stretches);
}
