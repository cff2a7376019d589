using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Chains.Families;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.ChainList;

/// <summary>
/// Which chains the list shows, and in what order. It stands in the address, so that a list can be sent to a colleague.
/// </summary>
public sealed record ChainFilter
{
    public string Search { get; init; } = "";

    public string? Line { get; init; }

    public Condition? Condition { get; init; }

    public ChainFamily? Family { get; init; }

    /// <summary>Only chains that lift or hold a load, or only the others; both when not told.</summary>
    public bool? Lifts { get; init; }

    /// <summary>Only chains whose early date lies before this plant date.</summary>
    public DateOnly? DueBefore { get; init; }

    /// <summary>Only chains that are to be shortened or tensioned anew before this plant date.</summary>
    public DateOnly? TensionBefore { get; init; }

    /// <summary>Only chains whose swap is planned, or only the others; both when not told.</summary>
    public bool? Planned { get; init; }

    /// <summary>Only chains whose names come after this one; null for all.</summary>
    public string? After { get; init; }

    public ChainSort Sort { get; init; }

    public bool Descending { get; init; }

    /// <summary>Whether anything is left out.</summary>
    public bool IsNarrowed => this with { Sort = default, Descending = false } != new ChainFilter();

    /// <summary>Whether this is the other filter with its search typed on or taken back by letters.</summary>
    public bool GoesOnTyping(ChainFilter from) =>
        Search.Length > 0 && from.Search.Length > 0 && this with { Search = from.Search } == from;

    /// <summary>Sorted by a column, the other way round when it is sorted by that already.</summary>
    public ChainFilter SortedBy(ChainSort sort) => this with { Sort = sort, Descending = sort == Sort && !Descending };

    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static ChainFilter FromQuery(string query)
    {
        var texts = QueryHelpers.ParseQuery(query);
        string? Value(string key) => texts.TryGetValue(key, out var values) ? values.ToString() : null;
        var told = ConditionWords.Find(Value("condition"));
        return new ChainFilter
        {
            Search = Value("search")?.Trim() ?? "",
            Line = Value("line"),
            Condition = told?.Condition,
            Lifts = told is { HoldsLoad: true } ? true : ReadYesNo(Value("lifts")),
            Planned = ReadYesNo(Value("planned")),
            Family = ChainFamily.Find(Value("family")),
            DueBefore = ReadDate(Value("due")),
            TensionBefore = ReadDate(Value("tension")),
            Sort = Named<ChainSort>(Value("sort")) ?? default,
            Descending = Value("descending") == "yes",
        };
    }

    /// <summary>The address of the list.</summary>
    public string ToAddress() => "/chains" + ToQuery();

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery()
    {
        var query = new Dictionary<string, string?>();
        if (Search.Length > 0) query["search"] = Search;
        if (Line is not null) query["line"] = Line;
        if (Condition is { } condition) query["condition"] = ConditionWords.Of(condition, Lifts == true).Style;
        if (Lifts is { } lifts && !(lifts && Condition is not null)) query["lifts"] = lifts ? "yes" : "no";
        if (Family is { } family) query["family"] = family.Name;
        if (DueBefore is { } due) query["due"] = Text(due);
        if (TensionBefore is { } tension) query["tension"] = Text(tension);
        if (Planned is { } planned) query["planned"] = planned ? "yes" : "no";
        if (Sort != default) query["sort"] = Sort.ToString().ToLowerInvariant();
        if (Descending) query["descending"] = "yes";
        return QueryHelpers.AddQueryString("", query);
    }

    /// <summary>A choice as the address and the controls write it; null for both.</summary>
    public static bool? ReadYesNo(string? text) => text switch { "yes" => true, "no" => false, _ => null };

    /// <summary>A date as the address and the controls write it; null for none.</summary>
    public static DateOnly? ReadDate(string? text) => DateOnly.TryParseExact(
        text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    /// <summary>A date as the address and the controls write it.</summary>
    public static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static T? Named<T>(string? name)
        where T : struct, Enum =>
        name is not null && !int.TryParse(name, out _) && Enum.TryParse<T>(name, ignoreCase: true, out var value) ? value : null;
}
