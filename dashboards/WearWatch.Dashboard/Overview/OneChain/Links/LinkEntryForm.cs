using System.Globalization;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Units;

namespace WearWatch.Dashboard.Overview.OneChain.Links;

/// <summary>Measures of links as a person types them.</summary>
public sealed class LinkEntryForm
{
    private DateTimeOffset? toldAt;

    public string Place { get; set; } = "";

    public string OneLink { get; set; } = "";

    public string SeveralLinks { get; set; } = "";

    public string D1 { get; set; } = "";

    public string D2 { get; set; } = "";

    public string Counter { get; set; } = "";

    /// <summary>With what the length over links was measured.</summary>
    public Tool Tool { get; set; } = Tool.Caliper;

    /// <summary>Made once for each form: pressing the button twice tells it once.</summary>
    public string Key { get; } = "links-" + Guid.NewGuid().ToString("N");

    /// <summary>What is told; told again, it keeps the moment of the first time.</summary>
    public NewLinkMeasures ToEntry(string chain, string by, LengthUnit unit, DateTimeOffset now)
    {
        toldAt ??= now;
        return new NewLinkMeasures
        {
            Key = Key,
            Chain = chain,
            TakenAt = toldAt,
            CounterH = double.TryParse(Counter.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var h)
                ? h
                : null,
            Place = Place,
            Tool = Tool,
            OneLink = OneLink,
            SeveralLinks = SeveralLinks,
            D1 = D1,
            D2 = D2,
            Unit = unit,
            ToldBy = by,
        };
    }
}
