using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>What the page of lives shows. It stands in the address, so that a picture can be sent to a colleague.</summary>
/// <param name="By">By what the chains are told apart.</param>
/// <param name="Lognormal">Whether lives are laid on lognormal rather than Weibull paper.</param>
/// <param name="Shown">Names of the groups that are drawn and compared; none for the largest few.</param>
public sealed record LivesFilter(LifeGrouping By, bool Lognormal, IReadOnlyList<string> Shown)
{
    /// <summary>More lines than this in a picture cannot be told apart.</summary>
    public const int MostShown = 5;

    /// <summary>Whether groups of which nothing can be fitted are listed too.</summary>
    public bool Every { get; init; }

    /// <summary>The hours of which the reliability is asked; null for none.</summary>
    public double? AtHours { get; init; }

    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static LivesFilter FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        return new(
            Enum.TryParse<LifeGrouping>(values.GetValueOrDefault("by"), ignoreCase: true, out var by)
                && Enum.IsDefined(by) ? by : LifeGrouping.Type,
            values.GetValueOrDefault("paper") == "lognormal",
            [.. values.GetValueOrDefault("show").OfType<string>().Distinct().Take(MostShown)])
        {
            Every = values.GetValueOrDefault("every") == "yes",
            AtHours = double.TryParse(
                values.GetValueOrDefault("hours"), NumberStyles.Float, CultureInfo.InvariantCulture, out var hours)
                && hours is > 0 and < 1e7 ? hours : null,
        };
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery() =>
        $"?by={By.ToString().ToLowerInvariant()}{(Lognormal ? "&paper=lognormal" : "")}{(Every ? "&every=yes" : "")}"
        + (AtHours is { } hours ? string.Create(CultureInfo.InvariantCulture, $"&hours={hours}") : "")
        + string.Concat(Shown.Select(s => "&show=" + Uri.EscapeDataString(s)));

    /// <summary>The same with one group taken in or out.</summary>
    public LivesFilter Toggle(string group, IReadOnlyList<string> drawn) =>
        this with
        {
            Shown = drawn.Contains(group)
            ? [.. drawn.Where(g => g != group)]
            : [.. drawn.TakeLast(MostShown - 1), group]
        };

    public bool Equals(LivesFilter? other) => other is not null && ToQuery() == other.ToQuery();

    public override int GetHashCode() => ToQuery().GetHashCode(StringComparison.Ordinal);
}
