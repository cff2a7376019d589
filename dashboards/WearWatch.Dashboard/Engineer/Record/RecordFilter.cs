using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.Record;

/// <summary>What the page of the forecast record shows; it stands in the address.</summary>
/// <param name="Remade">Whether forecasts made again are shown rather than those kept.</param>
/// <param name="AtShare">The share of life at which calibration and groups are looked at.</param>
/// <param name="By">By what forecasts are told apart; null by model.</param>
public sealed record RecordFilter(bool Remade, double AtShare, LifeGrouping? By)
{
    public static RecordFilter FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        var at = int.TryParse(values.GetValueOrDefault("at"), NumberStyles.None, CultureInfo.InvariantCulture, out var percent)
            ? percent
            : 50;
        var named = Enum.TryParse<LifeGrouping>(values.GetValueOrDefault("by"), ignoreCase: true, out var by)
            && Enum.IsDefined(by);
        return new(
            values.GetValueOrDefault("source") == "remade",
            RecordedForecast.Shares.MinBy(s => Math.Abs(100 * s - at)),
            named && by != LifeGrouping.All ? by : null);
    }

    public string ToQuery() => string.Create(CultureInfo.InvariantCulture,
        $"?source={(Remade ? "remade" : "kept")}&at={100 * AtShare:0}&by={By?.ToString().ToLowerInvariant() ?? "model"}");

    /// <summary>The group that a forecast belongs to.</summary>
    public string GroupOf(RecordedForecast forecast) => By is { } by ? by.Of(forecast.Card) : forecast.Model;
}
