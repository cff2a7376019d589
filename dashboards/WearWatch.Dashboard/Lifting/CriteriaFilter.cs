using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Chains;
using WearWatch.Criteria;

namespace WearWatch.Dashboard.Lifting;

/// <summary>Which criteria for lifting chains the page shows; it stands in the address.</summary>
public sealed record CriteriaFilter
{
    public string Search { get; init; } = "";

    public CriterionFamily? Family { get; init; }

    public CriterionAction? Action { get; init; }

    public CriterionCertainty? Certainty { get; init; }

    /// <summary>The region, such as <c>uk</c>; empty for any.</summary>
    public string Region { get; init; } = "";

    /// <summary>The regions that any criterion names.</summary>
    public static IReadOnlyList<string> Regions { get; } =
        [.. LiftingCriteria.All.SelectMany(c => c.Regions).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>The criteria that fit, in the order of the table. What holds for all chains is among those of a kind.</summary>
    public IReadOnlyList<LiftingCriterion> Found =>
    [
        .. LiftingCriteria.All.Where(c => (Family is null || c.Family == Family || c.Family == CriterionFamily.Any)
            && (Action is null || c.Action == Action) && (Certainty is null || c.Certainty == Certainty)
            && (Region.Length == 0 || c.Regions.Contains(Region))
            && Search.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => Text(c).Contains(
                word, StringComparison.OrdinalIgnoreCase))),
    ];

    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static CriteriaFilter FromQuery(string query)
    {
        var texts = QueryHelpers.ParseQuery(query);
        string Value(string key) => texts.TryGetValue(key, out var values) ? values.ToString() : "";
        return new CriteriaFilter
        {
            Search = Value("search"),
            Family = Word<CriterionFamily>(Value("family")),
            Action = Word<CriterionAction>(Value("action")),
            Certainty = Word<CriterionCertainty>(Value("certainty")),
            Region = Regions.Contains(Value("region")) ? Value("region") : "",
        };
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery()
    {
        var query = new Dictionary<string, string?>();
        if (Search.Length > 0) query["search"] = Search;
        if (Family is { } family) query["family"] = family.ToString().ToLowerInvariant();
        if (Action is { } action) query["action"] = action.ToString().ToLowerInvariant();
        if (Certainty is { } certainty) query["certainty"] = certainty.ToString().ToLowerInvariant();
        if (Region.Length > 0) query["region"] = Region;
        return QueryHelpers.AddQueryString("", query);
    }

    // A person searches in the words that the page shows.
    private static string Text(LiftingCriterion criterion) =>
        $"{T[criterion.Part]} {T[criterion.Words]} {T[SourceWords.Of(criterion.SourceWords)]}";

    private static T? Word<T>(string text)
        where T : struct, Enum =>
        Enum.TryParse<T>(text, ignoreCase: true, out var value) && Enum.IsDefined(value) ? value : null;
}
