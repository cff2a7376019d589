using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>Which notices the page shows; it stands in the address.</summary>
public sealed record NoticeFilter
{
    public NoticeKind? Kind { get; init; }

    public string? Line { get; init; }

    public bool UrgentOnly { get; init; }

    /// <summary>Only those that stand so.</summary>
    public NoticeStanding? Standing { get; init; }

    /// <summary>Only those that this person deals with; empty for those that nobody does.</summary>
    public string? AssignedTo { get; init; }

    /// <summary>Whether ended notices are shown instead of open ones.</summary>
    public bool Ended { get; init; }

    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static NoticeFilter FromQuery(string query)
    {
        var texts = QueryHelpers.ParseQuery(query);
        string? Value(string key) => texts.TryGetValue(key, out var values) ? values.ToString() : null;
        return new NoticeFilter
        {
            Kind = Named<NoticeKind>(Value("kind")),
            Line = Value("line"),
            UrgentOnly = Value("urgent") == "yes",
            Ended = Value("ended") == "yes",
            Standing = Named<NoticeStanding>(Value("standing")),
            AssignedTo = Value("assigned"),
        };
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery()
    {
        var query = new Dictionary<string, string?>();
        if (Kind is { } kind) query["kind"] = kind.ToString().ToLowerInvariant();
        if (Line is not null) query["line"] = Line;
        if (UrgentOnly) query["urgent"] = "yes";
        if (Ended) query["ended"] = "yes";
        if (Standing is { } standing) query["standing"] = standing.ToString().ToLowerInvariant();
        if (AssignedTo is not null) query["assigned"] = AssignedTo;
        return QueryHelpers.AddQueryString("", query);
    }

    private static T? Named<T>(string? name)
        where T : struct, Enum =>
        Enum.TryParse<T>(name, ignoreCase: true, out var value) && Enum.IsDefined(value) ? value : null;
}
