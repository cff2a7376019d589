using System.Text.RegularExpressions;

namespace WearWatch.Rounds;

/// <summary>The order in which a plant is walked: line by line, place by place.</summary>
/// <remarks>
/// Where the plant has set an order, that governs; what is not in it follows, by name as people count: place 2 before place 10.
/// </remarks>
public static partial class WalkingOrder
{
    /// <summary>Stops in walking order.</summary>
    /// <param name="stops">The stops.</param>
    /// <param name="line">The line of a stop.</param>
    /// <param name="place">The place of a stop on its line.</param>
    /// <param name="set">The number that the plant has given a stop; null for none.</param>
    public static IReadOnlyList<T> Of<T>(IEnumerable<T> stops, Func<T, string> line, Func<T, string> place, Func<T, int?> set) =>
    [
        .. stops.GroupBy(line)
            .OrderBy(there => there.Min(set) ?? int.MaxValue).ThenBy(there => AsCounted(there.Key), StringComparer.Ordinal)
            .SelectMany(there =>
                there.OrderBy(stop => set(stop) ?? int.MaxValue).ThenBy(stop => AsCounted(place(stop)), StringComparer.Ordinal)),
    ];

    /// <summary>Numbers within a name compare as numbers: every run of digits is brought to one width.</summary>
    private static string AsCounted(string name) =>
        Digits().Replace(name, digits => digits.Value.PadLeft(12, '0')).ToUpperInvariant();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
