using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>Stores telemetry and sums up its hours in one transaction.</summary>
public static class TelemetryKeeping
{
    private static readonly Dictionary<string, string> Together = new()
    {
        ["Count"] = "old.\"Count\" + excluded.\"Count\"",
        ["Sum"] = "old.\"Sum\" + excluded.\"Sum\"",
        ["Min"] = "CASE WHEN excluded.\"Min\" < old.\"Min\" THEN excluded.\"Min\" ELSE old.\"Min\" END",
        ["Max"] = "CASE WHEN excluded.\"Max\" > old.\"Max\" THEN excluded.\"Max\" ELSE old.\"Max\" END",
    };

    /// <summary>Stores the messages that are new, inside the current transaction.</summary>
    /// <param name="db">The plant's memory, in a transaction.</param>
    /// <param name="rows">The messages, each id once.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>The ids of the messages that were new.</returns>
    public static async Task<IReadOnlySet<string>> KeepTelemetryAsync(
        this WearDb db, IReadOnlyCollection<TelemetryRow> rows, CancellationToken ct = default)
    {
        var added = await db.AddNewAsync(rows, r => r.MessageId, ct);
        await db.MergeAsync([.. Hours(rows.Where(r => added.Contains(r.MessageId)))], Together, ct);
        return added;
    }

    /// <summary>Adds days inside the current transaction to those that are kept.</summary>
    public static Task KeepDaysAsync(this WearDb db, IEnumerable<TelemetryDayRow> days, CancellationToken ct = default) =>
        db.MergeAsync([.. days.OrderBy(d => d.ChainId).ThenBy(d => d.Kind).ThenBy(d => d.Day)], Together, ct);

    private static IEnumerable<TelemetryHourRow> Hours(IEnumerable<TelemetryRow> rows) => rows
        .GroupBy(r => (r.ChainId, r.Kind, Hour: r.At.UtcTicks - r.At.UtcTicks % TimeSpan.TicksPerHour))
        .OrderBy(g => g.Key)
        .Select(g => new TelemetryHourRow
        {
            ChainId = g.Key.ChainId,
            Kind = g.Key.Kind,
            Hour = new DateTimeOffset(g.Key.Hour, TimeSpan.Zero),
            Count = g.LongCount(),
            Sum = g.Sum(r => r.Value),
            Min = g.Min(r => r.Value),
            Max = g.Max(r => r.Value),
        });
}
