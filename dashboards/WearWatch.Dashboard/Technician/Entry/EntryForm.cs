using System.Globalization;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>What a person has typed so far, as it was typed.</summary>
public sealed class EntryForm
{
    public string Counter { get; set; } = "";

    public string Pitches { get; set; } = "";

    public string Length { get; set; } = "";

    public LengthUnit Unit { get; set; } = LengthUnit.Millimetre;

    public Tool Tool { get; set; } = Tool.Tape;

    public string Temperature { get; set; } = "";

    public string Place { get; set; } = "";

    /// <summary>Where the take-up stands, in millimetres; empty where nobody read it.</summary>
    public string TakeUp { get; set; } = "";

    /// <summary>Plant time as a date-and-time control gives it; empty for now.</summary>
    public string TakenAt { get; set; } = "";

    public string By { get; set; } = "";

    /// <summary>Tells this entry from others, however often it is sent.</summary>
    public string Key { get; private set; } = NewKey();

    /// <summary>The counter as a number; null for nothing or no number.</summary>
    public double? CounterH => Number(Counter);

    /// <summary>The pitches as a number; null for nothing or no whole number.</summary>
    public int? PitchCount => Number(Pitches) is { } n && n == Math.Floor(n) && n is >= 1 and <= 100_000 ? (int)n : null;

    /// <summary>The temperature as a number; null for nothing or no number.</summary>
    public double? TemperatureC => Number(Temperature);

    /// <summary>The take-up's position as a number; null for nothing or no number.</summary>
    public double? TakeUpMm => Number(TakeUp) is { } mm and >= 0 and <= EventFacts.MostTakeUpMm ? mm : null;

    /// <summary>Starts from a chain's last reading: counts and tools seldom change.</summary>
    public void StartFrom(ReadingRow? last)
    {
        if (last is null) return;
        (Pitches, Tool, Place) =
            (last.Pitches.ToString(CultureInfo.InvariantCulture), last.Tool == Tool.Sensor ? Tool.Tape : last.Tool, last.Place);
        Unit = last.Unit;
    }

    /// <summary>Shows a reading that is to be corrected, as it was told.</summary>
    public void Show(ReadingRow reading, PlantTime time)
    {
        StartFrom(reading);
        Tool = reading.Tool;
        Counter = reading.CounterH?.ToString(CultureInfo.InvariantCulture) ?? "";
        (Length, Unit) = reading.Written.Length > 0
            ? (reading.Written, reading.Unit)
            : (reading.LengthMm.ToString(CultureInfo.InvariantCulture), LengthUnit.Millimetre);
        TakeUp = reading.TakeUpMm?.ToString(CultureInfo.InvariantCulture) ?? "";
        Temperature = reading.TemperatureC?.ToString(CultureInfo.InvariantCulture) ?? "";
        TakenAt = reading.TakenAt is { } at ? Wall(at, time) : "";
    }

    /// <summary>Makes room for the next reading of the same round; tool and name stay.</summary>
    public void Next()
    {
        (Counter, Length, TakeUp, TakenAt, Key) = ("", "", "", "", NewKey());
    }

    /// <summary>Takes a slip's correction over: the person said yes to it.</summary>
    /// <param name="slip">The slip.</param>
    /// <param name="time">The plant's time.</param>
    public void Take(Slip slip, PlantTime time)
    {
        if (slip.CounterH is { } counter && counter != CounterH) Counter = counter.ToString("0.##", CultureInfo.InvariantCulture);
        if (slip.Kind == SlipKind.DateSlipped && slip.TakenAt is { } at) TakenAt = Wall(at, time);
        Pitches = slip.Pitches.ToString(CultureInfo.InvariantCulture);
        if (LengthText.Read(Length, Unit) is LengthText.Understood told
            && Math.Abs(told.Length.Millimetres - slip.LengthMm) < 0.005) return;
        (Length, Unit) = (slip.LengthMm.ToString("0.##", CultureInfo.InvariantCulture), LengthUnit.Millimetre);
    }

    /// <summary>One pitch more or less.</summary>
    public void Step(int by) => Pitches = Math.Max(1, (PitchCount ?? 0) + by).ToString(CultureInfo.InvariantCulture);

    /// <summary>What is sent.</summary>
    public NewReading ToReading(string chain, PlantTime time, bool confirmed) => new()
    {
        Key = Key,
        Chain = chain,
        TakenAt = TimeOf(time),
        CounterH = CounterH,
        Tool = Tool,
        Place = Place.Trim(),
        Pitches = PitchCount ?? 0,
        Length = Length,
        Unit = Unit,
        TemperatureC = TemperatureC,
        TakeUpMm = TakeUpMm,
        ToldBy = By.Trim().Length > 0 ? By.Trim() : PersonName.Nobody,
        Confirmed = confirmed,
    };

    /// <summary>A number with a decimal point or comma; null for anything else.</summary>
    public static double? Number(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture, out var n)
        && double.IsFinite(n) ? n : null;

    private DateTimeOffset TimeOf(PlantTime time) =>
        DateTime.TryParseExact(
            TakenAt, ["yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var wall)
            ? new DateTimeOffset(wall, time.Zone.GetUtcOffset(wall))
            : time.Now;

    private static string Wall(DateTimeOffset at, PlantTime time) =>
        TimeZoneInfo.ConvertTime(at, time.Zone).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture);

    private static string NewKey() => "entry-" + Guid.NewGuid().ToString("N");
}
