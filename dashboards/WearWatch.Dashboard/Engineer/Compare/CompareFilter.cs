using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>Which two sides are compared; it stands in the address, so that a comparison can be sent to a colleague.</summary>
/// <param name="By">By what chains are told apart.</param>
/// <param name="A">One side.</param>
/// <param name="B">The other.</param>
public sealed record CompareFilter(LifeGrouping By, CompareSide A, CompareSide B)
{
    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static CompareFilter FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        string Text(string name) => values.GetValueOrDefault(name).ToString();
        DateOnly? Day(string name) =>
            DateOnly.TryParseExact(Text(name), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                ? day
                : null;
        return new(
            LifeGroupings.FromQuery(query, LifeGrouping.Line),
            new(Text("a"), Day("a_from"), Day("a_to")),
            new(Text("b"), Day("b_from"), Day("b_to")));
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery() => $"?by={By.ToString().ToLowerInvariant()}{Of("a", A)}{Of("b", B)}";

    private static string Of(string name, CompareSide side) =>
        (side.Group.Length > 0 ? $"&{name}={Uri.EscapeDataString(side.Group)}" : "")
        + (side.From is { } from ? $"&{name}_from={from:yyyy-MM-dd}" : "")
        + (side.To is { } to ? $"&{name}_to={to:yyyy-MM-dd}" : "");
}
