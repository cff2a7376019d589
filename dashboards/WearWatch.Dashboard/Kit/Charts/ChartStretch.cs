using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>Which stretch of a chart is shown, and in what; it stands in the address.</summary>
/// <param name="FromHours">From which running hour; null for the beginning.</param>
/// <param name="ToHours">To which; null for the end.</param>
/// <param name="InDates">Whether dates stand on the axis.</param>
public sealed record ChartStretch(double? FromHours = null, double? ToHours = null, bool InDates = false)
{
    /// <summary>Whether it is a part of the chart.</summary>
    public bool IsPart => FromHours is not null || ToHours is not null;

    /// <summary>Reads a query string; what cannot be read, or makes no stretch, is left out.</summary>
    public static ChartStretch FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        double? Hours(string name) =>
            double.TryParse(values.GetValueOrDefault(name), CultureInfo.InvariantCulture, out var h) && h is >= 0 and < 1e7
                ? h
                : null;
        var (from, to) = (Hours("from"), Hours("to"));
        return to <= (from ?? 0) ? new(null, null, values.GetValueOrDefault("axis") == "dates")
            : new(from, to, values.GetValueOrDefault("axis") == "dates");
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery()
    {
        var query = new Dictionary<string, string?>();
        if (FromHours is { } from) query["from"] = from.ToString("0.#", CultureInfo.InvariantCulture);
        if (ToHours is { } to) query["to"] = to.ToString("0.#", CultureInfo.InvariantCulture);
        if (InDates) query["axis"] = "dates";
        return QueryHelpers.AddQueryString("", query);
    }
}
