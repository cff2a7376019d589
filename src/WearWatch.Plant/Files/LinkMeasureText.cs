using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>A row of link_measures.csv: the measures of a round-link chain's links at one place, as they were written.</summary>
public static class LinkMeasureText
{
    private const int MostLinks = 1000;

    /// <summary>The columns. What was not measured stays empty.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["chain", "taken_at", "counter_h", "place", "tool", "one_link", "several_links", "links", "d1", "d2", "unit"];

    /// <summary>The row as it was written, with its line; null when it is at fault.</summary>
    public static FileItem.Linked? Read(RowFields fields, int line)
    {
        var row = new FileItem.Linked(line)
        {
            OfChain = fields.Needed("chain", $"write the chain's name."),
            TakenAt = fields.Moment("taken_at"),
            CounterH = fields.Number("counter_h", 0, RowFields.MostCounterH),
            Place = fields.Needed("place", $"write which link, where: such as 40 links above the hook."),
            Tool = fields.Text("tool").Length == 0 ? Tool.Caliper : fields.Word("tool", FileWords.Tools) ?? default,
            OneLink = fields.Text("one_link"),
            SeveralLinks = fields.Text("several_links"),
            Links = fields.Whole("links", 1, MostLinks),
            D1 = fields.Text("d1"),
            D2 = fields.Text("d2"),
            Unit = fields.Word("unit", FileWords.Units) ?? LengthUnit.Millimetre,
        };
        if (fields.Text("unit").Length == 0) fields.Fault("unit", $"Empty: write mm or in.");
        return fields.Faults.Count > 0 ? null : row;
    }
}
