using Microsoft.EntityFrameworkCore;
using WearWatch.Planning.Supply;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>What swaps take from the store, and what comes back when a report is taken back.</summary>
internal static class SwapStock
{
    /// <summary>Takes what is there of the parts that are on record; the rest came from elsewhere.</summary>
    public static async Task<IReadOnlyList<PartTaken>> TakeAsync(
        WearDb db, IReadOnlyList<PartNeed> needs, CancellationToken ct)
    {
        var taken = new List<PartTaken>();
        foreach (var (part, quantity) in needs)
        {
            if (await SpareAsync(db, part.Kind.ToString(), part.Designation, ct) is not { InStock: > 0 } spare) continue;
            var (kind, there) = (spare.Kind, Math.Min(quantity, spare.InStock));
            spare.InStock -= there;
            taken.Add(new PartTaken(kind, part.Designation, there));
        }

        return taken;
    }

    /// <summary>Puts what was taken back.</summary>
    public static async Task PutBackAsync(WearDb db, IReadOnlyList<PartTaken> taken, CancellationToken ct)
    {
        foreach (var part in taken)
        {
            if (await SpareAsync(db, part.Kind, part.Designation, ct) is { } spare) spare.InStock += part.Quantity;
        }
    }

    private static Task<SpareRow?> SpareAsync(WearDb db, string kind, string designation, CancellationToken ct) =>
        db.Spares.FirstOrDefaultAsync(s => s.Kind == kind && s.Designation == designation, ct);
}
