using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>The one way in for what machines tell.</summary>
/// <remarks>
/// A call is one write transaction, committed to disk before it answers: whoever delivered may then acknowledge. A second
/// delivery changes nothing. What cannot be understood or used is set aside in the same transaction and holds nothing up.
/// </remarks>
public sealed class TelemetryDesk(
    IDbContextFactory<WearDb> database, ChainIds chains, IForeignSignals foreign, TelemetryNews news,
    IOptions<TelemetryOptions> options, IOptions<InfluxOptions> influx, TimeProvider clock)
{
    /// <summary>Clocks of machines may be ahead by so much.</summary>
    public static readonly TimeSpan Ahead = TimeSpan.FromHours(1);

    /// <summary>Takes messages in.</summary>
    public async Task<TelemetryTaken> TakeAsync(IReadOnlyList<Arrival> arrivals, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        // What is ours is read before the transaction, so that nobody waits for that.
        var read = arrivals.Where(IsOurs).SelectMany(SeveralMessages.In).Select(a => (Arrival: a, Text: TelemetryText.Read(a)))
            .ToList();
        using var trace = Meters.Traces.StartActivity("take telemetry");
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        foreach (var arrival in arrivals.Where(a => !IsOurs(a)))
        {
            var texts = await foreign.ReadAsync(db, arrival with { At = arrival.At ?? now }, ct) ?? [TelemetryText.Read(arrival)];
            read.AddRange(texts.Select(text => (arrival, text)));
        }

        var ids = await chains.FindAsync(
            db, read.Select(r => r.Text).OfType<TelemetryText.Understood>().Select(u => u.Message.Chain), ct);
        var aside = new List<(Arrival, Phrase)>();
        var good = new List<(Arrival Arrival, TelemetryRow Row)>();
        foreach (var (arrival, text) in read)
        {
            if (Fault(text, ids, now) is { } fault) aside.Add((arrival, fault));
            else if (text is TelemetryText.Understood { Message: var message })
                good.Add((arrival, Row(message, ids[message.Chain], now)));
        }

        var first = good.Select(g => g.Row).DistinctBy(r => r.MessageId, StringComparer.Ordinal)
            .ToDictionary(r => r.MessageId, StringComparer.Ordinal);
        var added = await db.KeepTelemetryAsync(first.Values, ct);
        var stored = await StoredAsync(db, first, added, ct);
        aside.AddRange(good.Where(g => !IsSame(stored[g.Row.MessageId], g.Row)).Select(g => (g.Arrival, IdIsUsed)));
        await SettingAside.KeepAsync(db, aside, now, ct);
        await transaction.CommitAsync(ct);
        Meters.Messages.Count(added.Count, "stored");
        Meters.Messages.Count(read.Count - added.Count - aside.Count, "known");
        Meters.Messages.Count(aside.Count, "set_aside");
        foreach (var row in first.Values.Where(r => added.Contains(r.MessageId))) Meters.Lag.Record((now - row.At).TotalSeconds);
        if (added.Count > 0) news.Tell([.. first.Values.Where(r => added.Contains(r.MessageId))]);
        return new TelemetryTaken(added.Count, read.Count - added.Count - aside.Count, aside.Count);
    }

    private static bool IsOurs(Arrival arrival) => TelemetryTopic.Read(arrival.Topic) is not null;

    private static readonly Phrase IdIsUsed = $"This id came before with something else. Every message needs an id of its own.";

    private Phrase? Fault(TelemetryText text, IReadOnlyDictionary<string, int> ids, DateTimeOffset now)
    {
        if (text is not TelemetryText.Understood { Message: var message }) return ((TelemetryText.NotUnderstood)text).Reason;
        if (!ids.ContainsKey(message.Chain))
            return $"There is no chain '{message.Chain}' in the register. Register it, then release this message.";
        if (message.At > now + Ahead) return $"The time lies in the future: set the sender's clock.";
        return message.At < now - TimeSpan.FromDays(options.Value.RawDays - 1)
            ? Phrase.Of($"Older than single messages are kept ({options.Value.RawDays} days): its day is closed.")
            : null;
    }

    private TelemetryRow Row(TelemetryMessage message, int chainId, DateTimeOffset now) => new()
    {
        MessageId = message.Id,
        ChainId = chainId,
        Kind = message.Kind,
        At = message.At,
        Value = message.Value,
        Payload = message.Payload,
        ReceivedAt = now,
        AwaitsForwarding = influx.Value.Url.Length > 0,
    };

    /// <summary>What is stored under each id now: what was added, else what was there.</summary>
    private static async Task<IReadOnlyDictionary<string, TelemetryRow>> StoredAsync(
        WearDb db, Dictionary<string, TelemetryRow> sent, IReadOnlySet<string> added, CancellationToken ct)
    {
        var known = sent.Keys.Where(id => !added.Contains(id)).ToList();
        if (known.Count == 0) return sent;
        var rows = await db.Telemetry.AsNoTracking().Where(t => EF.Parameter(known).Contains(t.MessageId)).ToListAsync(ct);
        return rows.Concat(sent.Values.Where(r => added.Contains(r.MessageId)))
            .ToDictionary(r => r.MessageId, StringComparer.Ordinal);
    }

    private static bool IsSame(TelemetryRow a, TelemetryRow b) =>
        (a.ChainId, a.Kind, a.At, a.Payload) == (b.ChainId, b.Kind, b.At, b.Payload) && a.Value.Equals(b.Value);
}
