using WearWatch.Chains;
using WearWatch.Links;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>Checks measures of links before they are kept.</summary>
internal static class LinkEntryCheck
{
    private static readonly Dictionary<string, string> Fields = new()
    {
        [nameof(MeasuredLinks.OneLinkMm)] = "one_link",
        [nameof(MeasuredLinks.SeveralLinksMm)] = "several_links",
        [nameof(MeasuredLinks.Links)] = "links",
        [nameof(MeasuredLinks.D1Mm)] = "d1",
        [nameof(MeasuredLinks.D2Mm)] = "d2",
        [nameof(MeasuredLinks.Tool)] = "tool",
    };

    /// <summary>The measures, or null with what is wrong with them.</summary>
    /// <param name="entry">What was typed.</param>
    /// <param name="card">The chain's card; null where no chain has the name.</param>
    /// <param name="now">The moment.</param>
    /// <param name="faults">What is wrong, field by field.</param>
    public static MeasuredLinks? Read(NewLinkMeasures entry, ChainCard? card, DateTimeOffset now, out List<Refusal> faults)
    {
        var found = faults = [];
        if (string.IsNullOrWhiteSpace(entry.Key) || entry.Key.Length > RowFields.LongestText)
            faults.Add(new("key", $"A key of 1 to 200 characters distinguishes this entry from others."));
        if (card is null) faults.Add(new("chain", $"No chain is called '{entry.Chain}'."));
        if (entry.TakenAt is null && entry.CounterH is null)
            faults.Add(new("taken_at", $"A measure needs its time or the hour counter."));
        if (Clocks.FaultOf(entry.TakenAt, now) is { } time) faults.Add(new("taken_at", time));
        if (entry.CounterH is { } h && h is not (>= 0 and <= RowFields.MostCounterH))
            faults.Add(new("counter_h", $"An hour counter shows 0 to 10,000,000."));
        if (entry.Place.Trim().Length is 0 or > RowFields.LongestText)
            faults.Add(new("place", $"Say which link, where: such as 40 links above the hook. 1 to 200 characters."));
        var told = new MeasuredLinks
        {
            TakenAt = entry.TakenAt?.ToUniversalTime(),
            Counter = RowFields.Hours(entry.CounterH),
            Place = entry.Place.Trim(),
            Tool = entry.Tool,
            OneLinkMm = Length("one_link", entry.OneLink),
            SeveralLinksMm = Length("several_links", entry.SeveralLinks),
            Links = entry.Links,
            D1Mm = Length("d1", entry.D1),
            D2Mm = Length("d2", entry.D2),
        };
        if (faults.Count > 0) return null;
        if (card!.Links is not { } table)
        {
            faults.Add(new("chain",
                $"The diameter of this chain's links is not known: enter it, with the maker's table, in its master data."));
            return null;
        }

        faults.AddRange(LinkFaults.Of(told, table).Select(f => new Refusal(Fields[f.Field], f.Reason)));
        return faults.Count == 0 ? told with { Links = told.SeveralLinksMm is null ? null : table.Links } : null;

        double? Length(string field, string text)
        {
            if (text.Trim().Length == 0) return null;
            if (LengthText.Read(text, entry.Unit) is LengthText.Understood understood) return understood.Length.Millimetres;
            found.Add(new(field, ((LengthText.NotUnderstood)LengthText.Read(text, entry.Unit)).Reason));
            return null;
        }
    }
}
