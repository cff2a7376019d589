using System.Globalization;

namespace WearWatch.Plant.WorkOrders;

/// <summary>The id under which a planned swap goes out to other systems, and under which they report on it.</summary>
public static class SwapId
{
    private const string Prefix = "swap-";

    /// <summary>The id of a decision, such as <c>swap-12</c>.</summary>
    public static string Of(long swapId) => string.Create(CultureInfo.InvariantCulture, $"{Prefix}{swapId}");

    /// <summary>The decision of an id; null for a text that is none.</summary>
    public static long? Read(string id) =>
        id.StartsWith(Prefix, StringComparison.Ordinal)
        && long.TryParse(id.AsSpan(Prefix.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
