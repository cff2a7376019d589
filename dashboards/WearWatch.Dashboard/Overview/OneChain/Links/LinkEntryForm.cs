using WearWatch.Dashboard.Kit.Language;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Dashboard.Overview.OneChain.Links;

/// <summary>Measures of links as a person types them.</summary>
public sealed class LinkEntryForm
{
    private DateTimeOffset? toldAt;
    private bool corrects;

    public string Place { get; set; } = "";

    public string OneLink { get; set; } = "";

    public string SeveralLinks { get; set; } = "";

    public string D1 { get; set; } = "";

    public string D2 { get; set; } = "";

    public string Counter { get; set; } = "";

    /// <summary>With what the length over links was measured.</summary>
    public Tool Tool { get; set; } = Tool.Caliper;

    /// <summary>Why earlier measures are put right, or empty.</summary>
    public string Why { get; set; } = "";

    /// <summary>Made once for each form: pressing the button twice tells it once.</summary>
    public string Key { get; } = "links-" + Guid.NewGuid().ToString("N");

    /// <summary>A form that holds measures as they were told, to be put right; they keep their time.</summary>
    /// <param name="row">The measures.</param>
    /// <param name="unit">The person's unit of plain numbers.</param>
    public static LinkEntryForm Of(LinkMeasureRow row, LengthUnit unit)
    {
        string Text(double? mm) => TypedNumber.Text(unit == LengthUnit.Inch ? mm / 25.4 : mm, "0.####");
        return new LinkEntryForm
        {
            Place = row.Place,
            OneLink = Text(row.OneLinkMm),
            SeveralLinks = Text(row.SeveralLinksMm),
            D1 = Text(row.D1Mm),
            D2 = Text(row.D2Mm),
            Counter = TypedNumber.Text(row.CounterH, "0.##"),
            Tool = row.Tool,
            toldAt = row.TakenAt,
            corrects = true,
        };
    }

    /// <summary>What is wrong with a number as typed, or which of two is meant; null where it is plain.</summary>
    public string? Fault(string field) => field switch
    {
        "one_link" => FaultOf(OneLink),
        "several_links" => FaultOf(SeveralLinks),
        "d1" => FaultOf(D1),
        "d2" => FaultOf(D2),
        "counter_h" when Counter.Trim().Length > 0 && TypedNumber.Of(Counter) is null =>
            TypedNumber.Fault(Counter, $"A number such as 12400."),
        _ => null,
    };

    /// <summary>What is told; told again, it keeps the moment of the first time.</summary>
    public NewLinkMeasures ToEntry(string chain, string by, LengthUnit unit, DateTimeOffset now)
    {
        if (!corrects) toldAt ??= now;
        return new NewLinkMeasures
        {
            Key = Key,
            Chain = chain,
            TakenAt = toldAt,
            CounterH = TypedNumber.Of(Counter),
            Place = Place,
            Tool = Tool,
            OneLink = Plain(OneLink),
            SeveralLinks = Plain(SeveralLinks),
            D1 = Plain(D1),
            D2 = Plain(D2),
            Unit = unit,
            ToldBy = by,
        };
    }

    private static string Plain(string typed) => TypedNumber.WithPoints(typed, out _) ?? typed;

    private static string? FaultOf(string typed) => TypedNumber.WithPoints(typed, out var question) is null ? T[question] : null;
}
