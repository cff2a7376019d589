using Microsoft.EntityFrameworkCore;
using WearWatch.Running;
using WearWatch.Signals;
using WearWatch.Signals.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>Makes the running hours of plant days of what signals tell.</summary>
public sealed class RunningConclusion(IDbContextFactory<WearDb> database)
{
    /// <summary>A day is closed by the next message, and begun by the last one: so far around it is looked for them.</summary>
    private static readonly TimeSpan Around = TimeSpan.FromDays(2);

    /// <summary>Concludes the days of these hours, and the days before, whose end the new messages may tell.</summary>
    /// <returns>Whether there was anything to conclude.</returns>
    public async Task<bool> ConcludeAsync(
        int chainId, IReadOnlyList<TelemetryHourRow> hours, ProductionCalendar calendar, CancellationToken ct = default)
    {
        if (hours.Count == 0) return false;
        var days = hours.SelectMany(h => new[] { h.Hour, h.Hour.AddDays(-1) }).Select(m => PlantDay.Of(m, calendar.TimeZone))
            .Distinct().OrderBy(d => d.Start).ToList();
        await using var db = await database.CreateDbContextAsync(ct);
        var rows = new List<RunDayRow>();
        foreach (var day in days)
        {
            var (from, to) = (day.Start - Around, day.End + Around);
            var signals = (await db.Telemetry.AsNoTracking()
                .Where(t => t.ChainId == chainId && t.At >= from && t.At < to
                    && (t.Kind == TelemetryKind.RunningCounter || t.Kind == TelemetryKind.RunningSwitch
                        || t.Kind == TelemetryKind.RunningPulses))
                .OrderBy(t => t.At).Select(t => new { t.Kind, t.At, t.Value }).ToListAsync(ct))
                .ToLookup(t => t.Kind, t => new RunningSignal(t.At, t.Value));
            if (RunningDay.Of(signals, day.Start, day.End, (a, b) => calendar.Between(a, b).Hours) is { } told)
                rows.Add(Row(chainId, day, told));
        }

        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        await db.KeepRunDaysAsync(rows, ct);
        await transaction.CommitAsync(ct);
        return rows.Count > 0;
    }

    private static RunDayRow Row(int chainId, PlantDay day, RunningDay told) => new()
    {
        ChainId = chainId,
        Day = day.Start,
        From = told.From,
        To = told.To,
        Hours = told.Hours,
        GapHours = told.GapHours,
        Resets = told.Resets,
        Source = told.Source,
    };
}
