using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>How a reading looks before it is saved.</summary>
public enum EntryJudgement
{
    /// <summary>Something is still missing.</summary>
    Incomplete,

    /// <summary>It is what was to be expected.</summary>
    Fits,

    /// <summary>It can be, but seldom is: measure again.</summary>
    Unusual,

    /// <summary>It hardly can be: a person must say yes.</summary>
    Doubtful,
}

/// <summary>What the page says while a person types: elongation, uncertainty, and whether it fits.</summary>
public sealed record EntryVerdict
{
    /// <summary>So many standard deviations off is unusual: 1 of 20 right readings is.</summary>
    private const double UnusualDeviations = 2;

    /// <summary>So many standard deviations off is doubtful: 1 of 2,000 right readings is.</summary>
    private const double DoubtfulDeviations = 3.5;

    /// <summary>Dates are told to the day.</summary>
    private const double HoursOfADay = 24;

    public required EntryJudgement Judgement { get; init; }

    public Elongation? Elongation { get; init; }

    /// <summary>The verdict in words, with what to look at.</summary>
    public required string Words { get; init; }

    /// <summary>What is wrong, by field in the words of the file format.</summary>
    public IReadOnlyDictionary<string, string> Faults { get; init; } = new Dictionary<string, string>();

    /// <summary>Whether it can be saved, if need be with a person's yes.</summary>
    public bool CanBeSaved => Judgement != EntryJudgement.Incomplete && Faults.Count == 0;

    /// <summary>
    /// Whether it can be weighed: nothing is missing, and at most the counter is faulty, for which a better may be found.
    /// </summary>
    public bool IsWorthAsking => Judgement != EntryJudgement.Incomplete && Faults.Keys.All(name => name == "counter_h");

    /// <summary>The verdict on what stands in the form.</summary>
    public static EntryVerdict Of(EntryForm form, EntryChain chain)
    {
        var faults = Check(form, chain, out var lengthMm);
        if (lengthMm is not { } length || form.PitchCount is not { } pitches)
            return new EntryVerdict
            {
                Judgement = EntryJudgement.Incomplete,
                Words = T["Count the pitches and read the tape."],
                Faults = faults,
            };
        return Gauge.Measure(chain.Row.PitchMm, pitches, length, form.Tool, form.TemperatureC) switch
        {
            GaugeOutcome.Measured measured => Compare(measured.Elongation, form, chain) with { Faults = faults },
            GaugeOutcome.Doubted doubted => new()
            {
                Judgement = EntryJudgement.Doubtful,
                Elongation = doubted.Elongation,
                Words = T[doubted.Reason],
                Faults = faults,
            },
            GaugeOutcome.Refused refused => new()
            {
                Judgement = EntryJudgement.Incomplete,
                Words = T[refused.Reason],
                Faults = With(faults, refused.Field, T[refused.Reason]),
            },
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static EntryVerdict Compare(Elongation elongation, EntryForm form, EntryChain chain)
    {
        var expected = EntryExpectation.Of(chain.Assessment, HoursSinceReading(form, chain));
        // What the uncertainty against nominal and the track share stays the same all the chain's life: only the scatter is new.
        var own = chain.Last is null ? elongation.StandardUncertaintyPercent : elongation.ScatterPercent;
        var deviation = Math.Sqrt(expected.DeviationPercent * expected.DeviationPercent + own * own);
        var off = (elongation.Percent - expected.Percent) / deviation;
        Phrase range = $"{Show.Percent(expected.Percent)} ± {Show.Percent(2 * deviation)} was to be expected";
        return Math.Abs(off) switch
        {
            <= UnusualDeviations =>
                new() { Judgement = EntryJudgement.Fits, Elongation = elongation, Words = T[$"Fits: {range}."] },
            <= DoubtfulDeviations => new()
            {
                Judgement = EntryJudgement.Unusual,
                Elongation = elongation,
                Words = off > 0
                    ? T[$"Unusually long: {range}. Measure again at the same place."]
                    : T[$"Unusually short: {range}. Measure again at the same place."],
            },
            _ => new()
            {
                Judgement = EntryJudgement.Doubtful,
                Elongation = elongation,
                Words = off > 0
                    ? T[$"Hardly possible, too long: {range}. Check the count, the unit and the decimal point."]
                    : T[$"Hardly possible, too short: {range}. Check the count, the unit and the decimal point."],
            },
        };
    }

    /// <summary>By the counter where it can be told and be right, else by the calendar.</summary>
    private static double HoursSinceReading(EntryForm form, EntryChain chain) =>
        form.CounterH is { } counter && chain.LastCounterH is { } last && counter >= last
            && !(chain.Last?.TakenAt is { } at && counter - last > (chain.Time.Now - at).TotalHours + HoursOfADay)
            ? counter - last
            : chain.Assessment.HoursNow - chain.Assessment.HoursAtLastReading;

    private static Dictionary<string, string> Check(EntryForm form, EntryChain chain, out double? lengthMm)
    {
        var faults = new Dictionary<string, string>();
        lengthMm = null;
        if (form.Length.Trim().Length > 0)
        {
            if (TypedNumber.WithPoints(form.Length, out var question) is not { } plain) faults["length"] = T[question];
            else if (LengthText.Read(plain, form.Unit) is LengthText.Understood understood)
                lengthMm = understood.Length.Millimetres;
            else if (LengthText.Read(plain, form.Unit) is LengthText.NotUnderstood not) faults["length"] = T[not.Reason];
        }

        if (form.Pitches.Trim().Length > 0 && form.PitchCount is null)
            faults["pitches"] = TypedNumber.Fault(form.Pitches, $"A whole number of pitches, at least 1.");
        if (form.Counter.Trim().Length > 0 && form.CounterH is null)
            faults["counter_h"] = TypedNumber.Fault(form.Counter, $"A number such as 12400.");
        if (form.Temperature.Trim().Length > 0 && form.TemperatureC is null)
            faults["temperature_c"] = TypedNumber.Fault(form.Temperature, $"A number in degrees Celsius, such as 45.");
        if (form.TakeUp.Trim().Length > 0 && form.TakeUpMm is null)
        {
            faults["take_up_mm"] =
                TypedNumber.Fault(form.TakeUp, $"Millimetres such as 35, from where a new chain is taut.");
        }

        if (form.CounterH < chain.LastCounterH && chain.Corrects is null)
            faults["counter_h"] =
                T[$"Lower than the last one, {Show.Hours(chain.LastCounterH)}. Was the counter changed? Then record that first."];
        return faults;
    }

    private static Dictionary<string, string> With(Dictionary<string, string> faults, string field, string reason)
    {
        faults[field] = reason;
        return faults;
    }
}
