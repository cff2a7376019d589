using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Language;
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

    /// <summary>The length with decimal points, as it is kept; as typed where a number in it can mean two.</summary>
    public string PlainLength => TypedNumber.WithPoints(Length, out _) ?? Length;

    /// <summary>The counter as a number; null for nothing or no number.</summary>
    public double? CounterH => TypedNumber.Of(Counter);

    /// <summary>The pitches as a number; null for nothing or no whole number.</summary>
    public int? PitchCount => TypedNumber.WholeOf(Pitches) is >= 1 and <= 100_000 and var n ? n : null;

    /// <summary>The temperature as a number; null for nothing or no number.</summary>
    public double? TemperatureC => TypedNumber.Of(Temperature);

    /// <summary>The take-up's position as a number; null for nothing or no number.</summary>
    public double? TakeUpMm => TypedNumber.Of(TakeUp) is { } mm and >= 0 and <= EventFacts.MostTakeUpMm ? mm : null;

    /// <summary>Starts from what is best measured, and with the tool and at the place of the last reading.</summary>
    public void StartFrom(SpanProposal proposal, ReadingRow? last)
    {
        Pitches = proposal.Pitches.ToString(CultureInfo.InvariantCulture);
        if (last is null) return;
        (Tool, Place) = (last.Tool == Tool.Sensor ? Tool.Tape : last.Tool, last.Place);
        Unit = last.Unit;
    }

    /// <summary>Shows a reading that is to be corrected, as it was told.</summary>
    public void Show(ReadingRow reading, PlantTime time)
    {
        Pitches = reading.Pitches.ToString(CultureInfo.InvariantCulture);
        (Tool, Place) = (reading.Tool, reading.Place);
        Counter = TypedNumber.Text(reading.CounterH);
        (Length, Unit) = reading.Written.Length > 0
            ? (Kit.Words.Show.Written(reading.Written), reading.Unit)
            : (TypedNumber.Text(reading.LengthMm), LengthUnit.Millimetre);
        TakeUp = TypedNumber.Text(reading.TakeUpMm);
        Temperature = TypedNumber.Text(reading.TemperatureC);
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
        if (slip.CounterH is { } counter && counter != CounterH) Counter = TypedNumber.Text(counter, "0.##");
        if (slip.Kind == SlipKind.DateSlipped && slip.TakenAt is { } at) TakenAt = Wall(at, time);
        Pitches = slip.Pitches.ToString(CultureInfo.InvariantCulture);
        if (LengthText.Read(PlainLength, Unit) is LengthText.Understood told
            && Math.Abs(told.Length.Millimetres - slip.LengthMm) < 0.005) return;
        (Length, Unit) = (TypedNumber.Text(slip.LengthMm, "0.##"), LengthUnit.Millimetre);
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
        Length = PlainLength,
        Unit = Unit,
        TemperatureC = TemperatureC,
        TakeUpMm = TakeUpMm,
        ToldBy = By.Trim().Length > 0 ? By.Trim() : PersonName.Nobody,
        Confirmed = confirmed,
    };

    private DateTimeOffset TimeOf(PlantTime time) =>
        DateTime.TryParseExact(
            TakenAt, ["yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var wall)
            ? new DateTimeOffset(wall, time.Zone.GetUtcOffset(wall))
            : time.Now;

    private static string Wall(DateTimeOffset at, PlantTime time) =>
        TimeZoneInfo.ConvertTime(at, time.Zone).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture);

    private static string NewKey() => "entry-" + Guid.NewGuid().ToString("N");
}
