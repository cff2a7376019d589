using System.Globalization;
using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>Checks a reading of a part before it is kept.</summary>
internal static class PartEntryCheck
{
    /// <summary>The reading, or null with what is wrong with it.</summary>
    /// <param name="entry">What was typed.</param>
    /// <param name="card">The chain's card; null where no chain has the name.</param>
    /// <param name="before">What was told of a part before.</param>
    /// <param name="now">The moment.</param>
    /// <param name="faults">What is wrong, field by field.</param>
    public static PartReading? Read(
        NewPartReading entry, ChainCard? card, Func<WearPart, PartTold> before, DateTimeOffset now, out List<Refusal> faults)
    {
        var found = faults = [];
        var written = entry.Told;
        if (string.IsNullOrWhiteSpace(entry.Key) || entry.Key.Length > RowFields.LongestText)
            faults.Add(new("key", $"A key of 1 to 200 characters distinguishes this entry from others."));
        if (card is null) faults.Add(new("chain", $"No chain is called '{written.Chain}'."));
        if (written.TakenAt is null && written.CounterH is null)
            faults.Add(new("taken_at", $"A measure needs its time or the hour counter."));
        if (Clocks.FaultOf(written.TakenAt, now) is { } time) faults.Add(new("taken_at", time));
        if (written.CounterH is { } h && h is not (>= 0 and <= RowFields.MostCounterH))
            faults.Add(new("counter_h", $"An hour counter shows 0 to 10,000,000."));
        if (!FileWords.Parts.TryGetValue(written.Part.Trim(), out var part))
            faults.Add(new("part", $"One of {string.Join(", ", FileWords.Parts.Keys.Order(StringComparer.Ordinal))}."));
        if (written.Place.Trim().Length > RowFields.LongestText || written.LimitSource.Trim().Length > RowFields.LongestText)
            faults.Add(new("place", $"At most 200 characters."));
        if (written.Value.Trim().Length == 0) faults.Add(new("value", $"A reading is wanted, such as 24.6."));
        var told = new PartTold(Length("new", written.New), Length("limit", written.Limit), written.LimitSource.Trim());
        var value = Length("value", written.Value);
        if (faults.Count > 0) return null;
        var reading = new PartReading
        {
            Part = part,
            Mm = value!.Value,
            TakenAt = written.TakenAt?.ToUniversalTime(),
            Counter = RowFields.Hours(written.CounterH),
            Place = written.Place.Trim(),
            Told = told,
        };
        faults.AddRange(PartFaults.Of(reading, card!, before(part)).Select(f => new Refusal(f.Field, f.Reason)));
        return faults.Count == 0 ? reading : null;

        double? Length(string field, string text)
        {
            if (text.Trim().Length == 0) return null;
            // Nothing is no length, and a tooth that is not worn reads so.
            if (double.TryParse(text, CultureInfo.InvariantCulture, out var plain) && plain == 0) return 0;
            if (LengthText.Read(text, written.Unit) is LengthText.Understood understood) return understood.Length.Millimetres;
            found.Add(new(field, ((LengthText.NotUnderstood)LengthText.Read(text, written.Unit)).Reason));
            return null;
        }
    }
}
