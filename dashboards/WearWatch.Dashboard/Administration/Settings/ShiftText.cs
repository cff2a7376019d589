using System.Globalization;
using WearWatch.Running;

namespace WearWatch.Dashboard.Administration.Settings;

/// <summary>A day's shifts as people write them: <c>06:00-14:00, 22:00-06:00</c>.</summary>
public static class ShiftText
{
    /// <summary>Writes shifts.</summary>
    public static string Write(IEnumerable<Shift> shifts) => string.Join(", ", shifts.OrderBy(s => s.Start).Select(s =>
        s.Length == TimeSpan.FromHours(24) ? $"{Text(s.Start)}-24:00" : $"{Text(s.Start)}-{Text(s.Start.Add(s.Length))}"));

    /// <summary>Reads shifts; null when something is no shift. An end not later than the start lies on the next day.</summary>
    public static IReadOnlyList<Shift>? Read(DayOfWeek day, string text)
    {
        var shifts = new List<Shift>();
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var ends = part.Split(['-', '–'], StringSplitOptions.TrimEntries);
            if (ends.Length != 2 || Time(ends[0]) is not { } start) return null;
            if (ends[1] == "24:00") shifts.Add(new Shift(day, start, TimeSpan.FromHours(24) - start.ToTimeSpan()));
            else if (Time(ends[1]) is { } end)
                shifts.Add(new Shift(day, start, start == end ? TimeSpan.FromHours(24) : end - start));
            else return null;
        }

        return shifts;
    }

    /// <summary>Whether two shifts of a week run at the same time.</summary>
    public static bool Overlap(IReadOnlyList<Shift> shifts)
    {
        var week = TimeSpan.FromDays(7);
        var stretches = shifts.Select(s => (Start: TimeSpan.FromDays((int)s.Day) + s.Start.ToTimeSpan(), s.Length))
            .OrderBy(s => s.Start).ToList();
        for (var i = 0; i < stretches.Count; i++)
        {
            var next = stretches[(i + 1) % stretches.Count].Start + (i + 1 == stretches.Count ? week : TimeSpan.Zero);
            if (stretches[i].Start + stretches[i].Length > next) return true;
        }

        return false;
    }

    private static TimeOnly? Time(string text) =>
        TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? time
            : null;

    private static string Text(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
