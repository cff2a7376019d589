using WearWatch.Chains;

namespace WearWatch.Storage.Rows;

/// <summary>The plant's settings.</summary>
public sealed class PlantRow
{
    public int Id { get; init; }

    public required string Name { get; set; }

    /// <summary>IANA time zone, such as Europe/Vienna.</summary>
    public required string TimeZone { get; set; }

    /// <summary>Weekly shifts as JSON: day, start, hours. Empty means round the clock.</summary>
    public string Shifts { get; set; } = "[]";

    /// <summary>Dates without production as JSON.</summary>
    public string Holidays { get; set; } = "[]";

    /// <summary>Share of the planned hours that is really run.</summary>
    public double Utilisation { get; set; } = 1;

    /// <summary>Whose law sets the intervals and limits of chains that lift.</summary>
    public LawRegion LawRegion { get; set; }

    /// <summary>Whether the simulated mill was loaded, so that screens say so.</summary>
    public bool IsDemo { get; set; }

    /// <summary>The first steps that a person has left out, by their names with blanks between.</summary>
    public string StepsSkipped { get; set; } = "";

    /// <summary>
    /// What tells this plant's labels from another plant's; made by chance when first needed, then kept. Empty before.
    /// </summary>
    public string Mark { get; set; } = "";
}
