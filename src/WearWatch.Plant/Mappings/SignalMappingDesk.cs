using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>Keeps mappings of foreign signals. A change is a new version; the old ones stay readable.</summary>
public sealed class SignalMappingDesk(IDbContextFactory<WearDb> databases, ActiveMappings active, TimeProvider clock)
{
    /// <summary>Keeps a version.</summary>
    /// <param name="row">The mapping, with the version that was seen before: 0 for a new one.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>What is wrong, by the name of the property; empty when it is kept.</returns>
    public async Task<IReadOnlyDictionary<string, Phrase>> SaveAsync(
        SignalMappingRow row, string by, CancellationToken ct = default)
    {
        if (SignalMapping.Of(row, out var faults) is null) return faults;
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var name = row.Name.Trim();
        var last = await db.SignalMappings.Where(m => m.Name == name).MaxAsync(m => (int?)m.Version, ct) ?? 0;
        if (last != row.Version)
            return new Dictionary<string, Phrase>
            {
                [nameof(row.Name)] = row.Version == 0
                    ? Phrase.Of($"There is a mapping of this name. Open it, or choose another name.")
                    : $"Somebody saved this mapping meanwhile. Load the page again.",
            };
        db.SignalMappings.Add(Next(row, name, by));
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        await active.RefreshAsync(ct);
        return faults;
    }

    private SignalMappingRow Next(SignalMappingRow row, string name, string by) => new()
    {
        Name = name,
        Version = row.Version + 1,
        Source = row.Source,
        Topic = row.Topic.Trim(),
        ValuePath = row.ValuePath.Trim(),
        TimeForm = row.TimeForm,
        TimePath = row.TimePath.Trim(),
        UnitPath = row.UnitPath.Trim(),
        Kind = row.Kind,
        Scale = row.Scale,
        Offset = row.Offset,
        Chain = row.Chain.Trim(),
        Words = row.Words,
        IsActive = row.IsActive,
        SavedAt = clock.GetUtcNow(),
        SavedBy = by,
    };
}
