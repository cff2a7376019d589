namespace WearWatch.Dashboard.Shell;

/// <summary>A line of the navigation.</summary>
/// <param name="Address">The page's address.</param>
/// <param name="Icon">Its sign.</param>
/// <param name="Name">Its name, a short word.</param>
/// <param name="More">
/// What it is for, in a sentence, for the page More: a phone shows it there alone. Null for what the thumb's row has room for.
/// </param>
public sealed record Destination(string Address, string Icon, Phrase Name, Phrase? More = null)
{
    /// <summary>All of them, in their order.</summary>
    public static IReadOnlyList<Destination> All { get; } =
    [
        new("/", "plant", $"Plant"),
        new("/chains", "list", $"Chains"),
        new("/floor/", "gauge", $"Floor") { IsPhones = true, IsDocument = true },
        new("/enter", "gauge", $"Enter", $"A reading, with a signal."),
        new("/rounds", "round", $"Rounds", $"What is due today by line, who has it, sheets and labels to print."),
        new("/plan", "calendar", $"Plan"),
        new("/lifting", "hook", $"Lifting", $"Chains that lift: examinations due, certificates, quarantine, release."),
        new("/lubrication", "oil", $"Lubrication"),
        new("/notices", "bell", $"Notices"),
        new("/engineering", "curve", $"Engineering", $"What drives wear, lives, the record of the forecasts, costs."),
        new("/tools", "caliper", $"Tools", $"Gauge, drive, chain types, trust in our measuring."),
        new("/import", "inbox", $"Import", $"Chains, readings and events from tables."),
        new("/data-sources", "down", $"Data sources", $"What machines send: what comes, what is late, what was set aside."),
        new("/settings", "sliders", $"Settings", $"The plant, its calendar, units, people."),
        new("/more", "more", $"More") { IsPhones = true },
    ];

    /// <summary>Whether only a phone shows it.</summary>
    public bool IsPhones { get; init; }

    /// <summary>Whether it lies beside the pages, and is loaded as a document of its own.</summary>
    public bool IsDocument { get; init; }

    /// <summary>Which screens show it, for the style sheet.</summary>
    public string Class => (IsPhones, More) switch
    {
        (true, _) => "phone-only",
        (_, not null) => "desk-only",
        _ => "",
    };
}
