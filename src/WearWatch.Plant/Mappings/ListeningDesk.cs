using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>Listens for a while to topics that a person wants to see, whether a mapping reads them or not.</summary>
public sealed class ListeningDesk(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>So long it is listened.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromMinutes(3);

    /// <summary>So many filters are listened to at once, the newest.</summary>
    private const int Most = 5;

    /// <summary>Begins to listen.</summary>
    /// <param name="topic">Topics as a mapping names them.</param>
    /// <param name="by">Who listens.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>What is wrong with the topics; nothing to say when it is listened.</returns>
    public async Task<Phrase> ListenAsync(string topic, string by, CancellationToken ct = default)
    {
        if (TopicPattern.Read(topic.Trim(), out var fault) is not { } pattern) return fault;
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.Listenings.Where(l => l.Until < now || l.Filter == pattern.Filter).ExecuteDeleteAsync(ct);
        db.Listenings.Add(new ListeningRow { Filter = pattern.Filter, Until = now + Lasts, By = by });
        await db.SaveChangesAsync(ct);
        return Phrase.None;
    }

    /// <summary>What is listened to now.</summary>
    public async Task<IReadOnlyList<string>> FiltersAsync(CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Listenings.AsNoTracking().Where(l => l.Until >= now).OrderByDescending(l => l.Id).Take(Most)
            .Select(l => l.Filter).ToListAsync(ct);
    }
}
