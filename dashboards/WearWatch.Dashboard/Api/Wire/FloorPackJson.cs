namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// All that a phone needs to work without signal: chains in walking order; hands are who has which line's round today.
/// </summary>
internal sealed record FloorPackJson
{
    public required DateTimeOffset MadeAt { get; init; }

    public required FloorPlantJson Plant { get; init; }

    public required IReadOnlyList<FloorChainJson> Chains { get; init; }

    public required IReadOnlyDictionary<string, string> Hands { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Cautions { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Guides { get; init; }

    public required IReadOnlyDictionary<string, FloorKindJson> Kinds { get; init; }

    public required IReadOnlyDictionary<string, IReadOnlyList<FloorPointJson>> Checklists { get; init; }
}

/// <summary>
/// What the gauge has to know of a kind of chain: pin_middles or link_edges, how much longer a new one may be, its parts.
/// </summary>
internal sealed record FloorKindJson(
    bool LinksAlternate, string Measured, double NewLengthTolerancePct, IReadOnlyList<FloorPartNameJson> Parts);

/// <summary>The plant; its mark is what its labels carry.</summary>
internal sealed record FloorPlantJson(string Name, string Mark, string TimeZone, double RunningHoursPerWeek, bool Simulated);

/// <summary>An entry that was refused, in words: of which chain and when it told what, and why it was refused.</summary>
internal sealed record HandedEntryJson(string? Entry, string? By);

/// <summary>A person takes a line's round of a day, or gives it back.</summary>
internal sealed record RoundHandEntryJson(string? Line, DateOnly? Day, bool? GivesBack, string? By);

/// <summary>Who has a line's round then; null for nobody.</summary>
internal sealed record RoundHandJson(string Line, DateOnly Day, string? Person);
