using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Api;

/// <summary>Keeps out entries that were made at the label of another plant, where chains may have the same names.</summary>
internal static class PlantCheck
{
    /// <summary>
    /// What is wrong with the plant that an entry names; null when it names this one by its name or its labels' mark, or none.
    /// </summary>
    public static async Task<Refusal?> FaultAsync(PlantSettings settings, string? plant, CancellationToken ct)
    {
        if (string.IsNullOrWhiteSpace(plant)) return null;
        var here = (await settings.CurrentAsync(ct)).Name;
        return string.Equals(plant.Trim(), here, StringComparison.OrdinalIgnoreCase)
            || plant.Trim() == await settings.MarkAsync(ct)
            ? null
            : new Refusal("plant", $"This is a position of the plant '{plant.Trim()}'; here is '{here}'. Nothing was stored.");
    }
}
