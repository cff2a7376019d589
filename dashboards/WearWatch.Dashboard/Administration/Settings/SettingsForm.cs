using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Settings;

/// <summary>One weekday's shifts as typed, such as <c>06:00-14:00, 14:00-22:00</c>; empty for a day off.</summary>
public sealed class ShiftDay(DayOfWeek day, string shifts)
{
    public DayOfWeek Day { get; } = day;

    public string Shifts { get; set; } = shifts;
}

/// <summary>The plant's settings as typed, and what is wrong with them.</summary>
public sealed class SettingsForm
{
    public string Name { get; set; } = "";

    public string TimeZone { get; set; } = "";

    public string UtilisationPercent { get; set; } = "";

    /// <summary>Whose law sets intervals and limits of chains that lift.</summary>
    public LawRegion LawRegion { get; set; }

    public bool RoundTheClock { get; set; } = true;

    public IReadOnlyList<ShiftDay> Days { get; private set; } = [];

    /// <summary>Dates without production, a line each.</summary>
    public string Holidays { get; set; } = "";

    /// <summary>The weekdays as people here count them.</summary>
    public static IReadOnlyList<DayOfWeek> Week { get; } =
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday,
            DayOfWeek.Sunday];

    /// <summary>What is kept, as a person would type it.</summary>
    public static SettingsForm Of(PlantRow plant)
    {
        var shifts = ShiftPlan.Shifts(plant.Shifts);
        return new SettingsForm
        {
            Name = plant.Name,
            TimeZone = plant.TimeZone,
            UtilisationPercent = TypedNumber.Text(100 * plant.Utilisation, "0.#"),
            LawRegion = plant.LawRegion,
            RoundTheClock = shifts.Count == 0,
            Days = [.. Week.Select(day => new ShiftDay(day, ShiftText.Write(shifts.Where(s => s.Day == day))))],
            Holidays = string.Join('\n', ShiftPlan.Holidays(plant.Holidays).Order()
                .Select(d => d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))),
        };
    }

    /// <summary>Reads what was typed: what to keep, or what is wrong by field.</summary>
    public IReadOnlyDictionary<string, Phrase> Read(out Action<PlantRow> change)
    {
        var faults = new Dictionary<string, Phrase>();
        if (Name.Trim().Length is 0 or > 80) faults["name"] = $"A name of 1 to 80 characters.";
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(TimeZone, out _))
            faults["zone"] = $"A time zone of the IANA list, such as Europe/Vienna.";
        var utilisation = TypedNumber.Of(UtilisationPercent) / 100;
        if (utilisation is not (> 0 and <= 1)) faults["utilisation"] = $"A share above 0 and at most 100 %.";
        var shifts = new List<Shift>();
        foreach (var day in RoundTheClock ? [] : Days)
        {
            if (ShiftText.Read(day.Day, day.Shifts) is { } read) shifts.AddRange(read);
            else faults[day.Day.ToString()] = $"Shifts such as 06:00-14:00, 22:00-06:00.";
        }

        if (!RoundTheClock && faults.Count == 0 && shifts.Count == 0)
            faults["shifts"] = $"A plant that never runs has no dates: give at least one shift, or round the clock.";
        if (ShiftText.Overlap(shifts)) faults["shifts"] = $"Two shifts overlap: hours would count twice.";
        if (ReadHolidays() is not { } holidays)
        {
            holidays = [];
            faults["holidays"] = $"A date a line, such as 2026-12-25.";
        }

        change = plant =>
        {
            (plant.Name, plant.TimeZone, plant.Utilisation) = (Name.Trim(), TimeZone, utilisation ?? 1);
            plant.LawRegion = LawRegion;
            (plant.Shifts, plant.Holidays) = (ShiftPlan.Text(shifts), ShiftPlan.Text(holidays.Distinct().Order()));
        };
        return faults;
    }

    private List<DateOnly>? ReadHolidays()
    {
        var dates = new List<DateOnly>();
        foreach (var line in Holidays.Split(
            ['\n', ',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (!DateOnly.TryParseExact(line, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
                return null;
            dates.Add(date);
        }

        return dates;
    }
}
