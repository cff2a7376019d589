using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage;

namespace WearWatch.Plant.Mappings;

/// <summary>
/// The last few messages of foreign topics, for whoever maps them: few of each topic, few topics, none that is long. They are
/// written down only while somebody listens.
/// </summary>
/// <remarks>Thread-safe.</remarks>
public sealed class HeardMessages(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>So many of a topic.</summary>
    public const int MostOfTopic = 3;

    /// <summary>So many topics; of more the silent ones go.</summary>
    public const int MostTopics = 200;

    /// <summary>A longer message is not kept here.</summary>
    public const int LongestBytes = 16 * 1024;

    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(1);
    private static readonly Dictionary<string, string> Newest =
        new() { ["Payload"] = "excluded.\"Payload\"", ["At"] = "excluded.\"At\"" };

    private readonly ConcurrentDictionary<string, HeardTopic> topics = new(StringComparer.Ordinal);

    /// <summary>Remembers a message.</summary>
    public void Hear(Arrival arrival)
    {
        if (arrival.Payload.Length > LongestBytes) return;
        var at = arrival.At ?? clock.GetUtcNow();
        topics.GetOrAdd(arrival.Topic, t => new HeardTopic(t)).Hear(arrival.Payload.ToArray(), at);
        while (topics.Count > MostTopics && topics.Values.MinBy(t => t.LastAt) is { } silent)
            topics.TryRemove(silent.Topic, out _);
    }

    /// <summary>Writes down what is not yet, and takes away what is too much or too old.</summary>
    public async Task KeepAsync(CancellationToken ct)
    {
        var rows = topics.Values.OrderBy(t => t.Topic, StringComparer.Ordinal).SelectMany(t => t.NotKept()).ToList();
        if (rows.Count == 0) return;
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        await db.MergeAsync(rows, Newest, ct);
        var before = clock.GetUtcNow() - KeptFor;
        await db.HeardMessages.Where(h => h.At < before).ExecuteDeleteAsync(ct);
        var kept = await db.HeardMessages.GroupBy(h => h.Topic).OrderByDescending(g => g.Max(h => h.At)).Skip(MostTopics)
            .Select(g => g.Key).ToListAsync(ct);
        if (kept.Count > 0) await db.HeardMessages.Where(h => kept.Contains(h.Topic)).ExecuteDeleteAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
