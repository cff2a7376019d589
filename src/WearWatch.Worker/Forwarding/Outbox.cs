using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Series;

namespace WearWatch.Worker.Forwarding;

/// <summary>Sends telemetry on to a store of time series. A row waits in the plant's memory until it is there.</summary>
/// <remarks>
/// A process that is killed between sending and marking sends rows again: the store overwrites them with themselves.
/// </remarks>
public sealed class Outbox(IDbContextFactory<WearDb> database, SeriesWriter writer, TimeProvider clock, ILogger<Outbox> logger)
{
    /// <summary>How many rows wait.</summary>
    public async Task<int> LengthAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Telemetry.CountAsync(t => t.AwaitsForwarding, ct);
    }

    /// <summary>Sends what waits, at most one request full.</summary>
    /// <returns>What the store said and how many rows do not wait any more; null when none waited.</returns>
    public async Task<(SeriesAnswer Answer, int Sent)?> SendAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var rows = await db.Telemetry.AsNoTracking().Where(t => t.AwaitsForwarding).OrderBy(t => t.Id)
            .Take(SeriesWriter.MostLines).ToListAsync(ct);
        if (rows.Count == 0) return null;
        var ids = rows.Select(r => r.ChainId).Distinct().ToList();
        var chains = await db.Chains.AsNoTracking().Where(c => EF.Parameter(ids).Contains(c.Id)).ToDictionaryAsync(c => c.Id, ct);
        var parked = new List<ParkedRow>();
        var (answer, sent) = await SendAsync([.. rows.Select(r => (r, SeriesSchema.Line(r, chains[r.ChainId])))], parked, ct);
        Meters.Forwarded.Add(sent.Count - parked.Count);
        await MarkAsync(db, [.. sent.Select(r => r.Id)], parked, ct);
        return (answer, sent.Count);
    }

    /// <summary>Sends rows; where some are wrong, halves are sent again until the wrong ones stand alone.</summary>
    private async Task<(SeriesAnswer Answer, IReadOnlyList<TelemetryRow> Done)> SendAsync(
        List<(TelemetryRow Row, string Line)> rows, List<ParkedRow> parked, CancellationToken ct)
    {
        var answer = await writer.WriteAsync([.. rows.Select(r => r.Line)], ct);
        if (answer is SeriesAnswer.Stored) return (answer, [.. rows.Select(r => r.Row)]);
        if (answer is not SeriesAnswer.Wrong wrong) return (answer, []);
        if (rows is [var alone])
        {
            parked.Add(new ParkedRow { TelemetryId = alone.Row.Id, Reason = wrong.Why, At = clock.GetUtcNow() });
            return (new SeriesAnswer.Stored(), [alone.Row]);
        }

        var (first, done) = await SendAsync(rows[..(rows.Count / 2)], parked, ct);
        if (first is not SeriesAnswer.Stored) return (first, done);
        var (second, more) = await SendAsync(rows[(rows.Count / 2)..], parked, ct);
        return (second, [.. done, .. more]);
    }

    private async Task MarkAsync(WearDb db, List<long> sent, List<ParkedRow> parked, CancellationToken ct)
    {
        if (sent.Count == 0) return;
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        await db.AddNewAsync(parked, p => p.TelemetryId, ct);
        await db.Telemetry.Where(t => EF.Parameter(sent).Contains(t.Id))
            .ExecuteUpdateAsync(t => t.SetProperty(x => x.AwaitsForwarding, false), ct);
        await transaction.CommitAsync(ct);
        if (parked.Count > 0) logger.Parked(parked.Count, parked[0].Reason);
    }
}
