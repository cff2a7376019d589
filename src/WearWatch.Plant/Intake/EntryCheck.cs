using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Intake;

/// <summary>Checks the fields of a single entry before anything is looked up.</summary>
internal static class EntryCheck
{
    /// <summary>A reading whose fields can be read; null with what is wrong with it.</summary>
    public static Reading? Read(NewReading reading, out List<Refusal> faults)
    {
        faults = Common(reading.Key, reading.Chain);
        if (reading.TakenAt is null && reading.CounterH is null)
            faults.Add(new("counter_h", $"A reading needs its time or the hour counter."));
        if (reading.CounterH is { } h && h is not (>= 0 and <= RowFields.MostCounterH))
            faults.Add(new("counter_h", $"An hour counter shows 0 to 10,000,000."));
        if (!Enum.IsDefined(reading.Tool)) faults.Add(new("tool", $"The tool is a tape, a caliper or a sensor."));
        if (reading.Place.Length > RowFields.LongestText) faults.Add(TooLong("place", RowFields.LongestText));
        if (reading.Strand is < 1 or > ChainCard.MostStrands)
            faults.Add(new("strand", $"Strands are counted from 1 to {ChainCard.MostStrands}."));
        if (reading.Pitches is < 1 or > 100_000)
            faults.Add(new("pitches", $"Count at least one pitch; a length over no pitch says nothing."));
        if (reading.TemperatureC is { } t && t is not (>= -60 and <= 400))
            faults.Add(new("temperature_c", $"A chain that is measured has between -60 and 400 degrees Celsius."));
        if (TakeUpFault(reading.TakeUpMm) is { } takeUp) faults.Add(takeUp);
        switch (EnteredLengths.Read(reading.Length, reading.Unit))
        {
            case EnteredLengths.Understood understood:
                return faults.Count == 0 ? reading.ToReading(understood) : null;
            case EnteredLengths.NotUnderstood not:
                faults.Add(new("length", not.Reason));
                return null;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    /// <summary>What is wrong with an event's fields; empty when they can be read.</summary>
    public static List<Refusal> Faults(NewEvent happening, DateTimeOffset now)
    {
        var told = happening.Told;
        var faults = Common(happening.Key, told.Chain);
        if (!Enum.IsDefined(told.Kind)) faults.Add(new("event", $"No such event."));
        if (told is { At: null, CounterBefore: null, CounterAfter: null })
            faults.Add(new("taken_at", $"An event needs its time or the hour counter."));
        if (Clocks.FaultOf(told.At, now) is { } time) faults.Add(new("taken_at", time));
        if (told.CounterBefore is { } before && before.Hours is not (>= 0 and <= RowFields.MostCounterH))
            faults.Add(new("counter_h_before", $"An hour counter shows 0 to 10,000,000."));
        if (told.CounterAfter is { } after && after.Hours is not (>= 0 and <= RowFields.MostCounterH))
            faults.Add(new("counter_h_after", $"An hour counter shows 0 to 10,000,000."));
        if (told.Lot.Length > RowFields.LongestText) faults.Add(TooLong("lot", RowFields.LongestText));
        if (told.Oil.Method is { } method && !Enum.IsDefined(method)) faults.Add(new("oil_method", $"No such method."));
        if (told.Oil.Grade.Length > RowFields.LongestText) faults.Add(TooLong("oil_grade", RowFields.LongestText));
        if (told.Oil.AmountMl is { } ml && ml is not (>= 0 and <= OilApplied.MostMl))
            faults.Add(new("oil_amount_ml", $"An amount lies between 0 and 100,000 ml."));
        if (told is { Kind: ChainEventKind.Shortened, PitchesOut: null })
            faults.Add(new("pitches_out", $"Say how many pitches were taken out."));
        if (told.PitchesOut is < 1 or > EventFacts.MostPitchesOut)
            faults.Add(new("pitches_out", $"A whole number of pitches, 1 to 10,000."));
        if (told.NewPitches is < 1 or > EventFacts.MostPitches)
            faults.Add(new("new_pitches", $"A whole number of pitches, 1 to 1,000,000."));
        if (told.NewTeeth is < EventFacts.FewestTeeth or > EventFacts.MostTeeth)
            faults.Add(new("new_teeth", $"A sprocket has 5 to 1,000 teeth."));
        if (TakeUpFault(told.TakeUpMm) is { } takeUp) faults.Add(takeUp);
        if (told.Note.Length > EventColumns.LongestNote) faults.Add(TooLong("note", EventColumns.LongestNote));
        faults.AddRange(EventFacts.Faults(told).Select(f => new Refusal(f.Field, f.Reason)));
        return faults;
    }

    private static Refusal? TakeUpFault(double? mm) => mm is null or (>= 0 and <= EventFacts.MostTakeUpMm)
        ? null
        : new("take_up_mm", $"A take-up stands 0 to 100,000 mm from where a new chain is taut.");

    private static Refusal TooLong(string field, int most) => new(field, $"Longer than {most} characters.");

    private static List<Refusal> Common(string key, string chain)
    {
        var faults = new List<Refusal>();
        if (string.IsNullOrWhiteSpace(key) || key.Length > RowFields.LongestText)
            faults.Add(new("key", $"A key of 1 to 200 characters distinguishes this entry from others."));
        if (string.IsNullOrWhiteSpace(chain)) faults.Add(new("chain", $"Say which chain."));
        return faults;
    }
}
