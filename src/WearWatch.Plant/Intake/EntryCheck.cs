using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>Checks the fields of a single entry before anything is looked up.</summary>
internal static class EntryCheck
{
    private const int LongestText = 200;
    private const double MostCounterH = 1e7;

    /// <summary>What is wrong with a reading's fields; empty when they can be read.</summary>
    public static List<Refusal> Read(NewReading reading, out double lengthMm)
    {
        var faults = Common(reading.Key, reading.Chain);
        lengthMm = double.NaN;
        if (reading.TakenAt is null && reading.CounterH is null)
            faults.Add(new("counter_h", "A reading needs its time or the hour counter."));
        if (reading.CounterH is { } h && h is not (>= 0 and <= MostCounterH))
            faults.Add(new("counter_h", "An hour counter shows 0 to 10,000,000."));
        if (!Enum.IsDefined(reading.Tool)) faults.Add(new("tool", "The tool is a tape, a caliper or a sensor."));
        if (reading.Place.Length > LongestText) faults.Add(new("place", $"Longer than {LongestText} characters."));
        if (reading.Strand is < 1 or > ChainCard.MostStrands)
            faults.Add(new("strand", $"Strands are counted from 1 to {ChainCard.MostStrands}."));
        if (reading.Pitches is < 1 or > 100_000)
            faults.Add(new("pitches", "Count at least one pitch; a length over no pitch says nothing."));
        if (reading.TemperatureC is { } t && t is not (>= -60 and <= 400))
            faults.Add(new("temperature_c", "A chain that is measured has between -60 and 400 degrees Celsius."));
        switch (LengthsTold.Read(reading.Length, reading.Unit))
        {
            case LengthsTold.Understood understood:
                lengthMm = understood.MeanMm;
                break;
            case LengthsTold.NotUnderstood not:
                faults.Add(new("length", not.Reason));
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }

        return faults;
    }

    /// <summary>What is wrong with an event's fields; empty when they can be read.</summary>
    public static List<Refusal> Faults(NewEvent happening, DateTimeOffset now)
    {
        var faults = Common(happening.Key, happening.Chain);
        if (!Enum.IsDefined(happening.Kind)) faults.Add(new("event", "No such event."));
        if (happening.At is null && happening.CounterBeforeH is null && happening.CounterAfterH is null)
            faults.Add(new("taken_at", "An event needs its time or the hour counter."));
        if (happening.At > now + Clocks.Ahead) faults.Add(new("taken_at", "The time lies in the future."));
        if (happening.CounterBeforeH is { } before && before is not (>= 0 and <= MostCounterH))
            faults.Add(new("counter_h_before", "An hour counter shows 0 to 10,000,000."));
        if (happening.CounterAfterH is { } after && after is not (>= 0 and <= MostCounterH))
            faults.Add(new("counter_h_after", "An hour counter shows 0 to 10,000,000."));
        if (happening.Lot.Length > LongestText) faults.Add(new("lot", $"Longer than {LongestText} characters."));
        if (happening.Kind != Chains.ChainEventKind.Oiling && happening.Oil != Chains.OilApplied.Untold)
            faults.Add(new("oil_method", "Only an oiling has a method, a grade or an amount."));
        if (happening.Oil.Method is { } method && !Enum.IsDefined(method)) faults.Add(new("oil_method", "No such method."));
        if (happening.Oil.Grade.Length > LongestText) faults.Add(new("oil_grade", $"Longer than {LongestText} characters."));
        if (happening.Oil.AmountMl is { } ml && ml is not (>= 0 and <= Chains.OilApplied.MostMl))
            faults.Add(new("oil_amount_ml", "An amount lies between 0 and 100,000 ml."));
        if (happening.Note.Length > 10 * LongestText) faults.Add(new("note", $"Longer than {10 * LongestText} characters."));
        return faults;
    }

    public static Reading ToReading(NewReading reading, double lengthMm) => new()
    {
        Chain = reading.Chain,
        TakenAt = reading.TakenAt?.ToUniversalTime(),
        Counter = reading.CounterH is { } h ? new RunningHours(h) : null,
        Tool = reading.Tool,
        Place = reading.Place.Trim(),
        Strand = reading.Strand,
        Held = reading.Held,
        Pitches = reading.Pitches,
        LengthMm = lengthMm,
        TemperatureC = reading.TemperatureC,
        LengthUncertaintyMm = reading.LengthUncertaintyMm,
    };

    /// <summary>The length as it was typed, with the unit that was meant.</summary>
    public static string LengthAsTold(NewReading reading) => $"{reading.Length.Trim()} {(reading.Unit == LengthUnit.Inch ? "in" : "mm")}";

    private static List<Refusal> Common(string key, string chain)
    {
        var faults = new List<Refusal>();
        if (string.IsNullOrWhiteSpace(key) || key.Length > LongestText)
            faults.Add(new("key", "A key of 1 to 200 characters tells this entry from others."));
        if (string.IsNullOrWhiteSpace(chain)) faults.Add(new("chain", "Say which chain."));
        return faults;
    }
}
