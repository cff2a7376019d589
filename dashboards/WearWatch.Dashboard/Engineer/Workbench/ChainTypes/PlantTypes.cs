using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Engineer.Workbench.ChainTypes;

/// <summary>A chain type that runs in the plant and that the catalogue does not have.</summary>
/// <param name="Type">What the register says of it; the plant stands for its values.</param>
/// <param name="Chains">How many chains are of it.</param>
public sealed record PlantType(ChainType Type, int Chains);

/// <summary>
/// The types that a plant brought itself: inverted-tooth chain, a maker's own pitch, anything that no standard describes.
/// </summary>
public sealed class PlantTypes(IDbContextFactory<WearDb> databases)
{
    public async Task<IReadOnlyList<PlantType>> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var chains = await db.Chains.AsNoTracking().Select(c => new { c.ChainType, c.Family, c.PitchMm }).ToListAsync(ct);
        return [.. chains
            .Where(c => ChainCatalogue.Find(c.ChainType) is null)
            .GroupBy(c => c)
            .Select(same =>
                new PlantType(ChainType.Custom(NameOf(same.Key.ChainType), same.Key.Family, same.Key.PitchMm), same.Count()))
            .OrderBy(t => t.Type.Designation, StringComparer.Ordinal).ThenBy(t => t.Type.PitchMm!.Value.Value)];
    }

    private static string NameOf(string designation) => designation.Length > 0 ? designation : T["without a designation"];
}
