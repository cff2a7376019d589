using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>What of the board is drawn. It stands in the address, so that a part can be sent to a colleague.</summary>
/// <param name="Line">Only this line; empty for all.</param>
/// <param name="Condition">Only chains of this condition, by its word in addresses; empty for all.</param>
/// <param name="Folds">Whether days on which no swap stands are left out.</param>
public sealed record BoardFilter(string Line, string Condition, bool Folds)
{
    /// <summary>Reads a query string.</summary>
    public static BoardFilter FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        return new(
            values.GetValueOrDefault("line").ToString(), values.GetValueOrDefault("condition").ToString(),
            values.GetValueOrDefault("fold") == "yes");
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery() => QueryHelpers.AddQueryString("", new Dictionary<string, string?>
    {
        ["line"] = Line.Length > 0 ? Line : null,
        ["condition"] = Condition.Length > 0 ? Condition : null,
        ["fold"] = Folds ? "yes" : null,
    });

    /// <summary>Whether a chain is drawn.</summary>
    public bool Shows(ChainFace face) =>
        (Line.Length == 0 || face.Row.Line == Line) && (Condition.Length == 0 || face.Condition.Style == Condition);
}
