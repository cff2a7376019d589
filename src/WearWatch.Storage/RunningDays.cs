using Microsoft.EntityFrameworkCore;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>The kept running hours by day, as the record that takes the calendar's place.</summary>
public static class RunningDays
{
    private static readonly Dictionary<string, string> Anew = new[] { "From", "To", "Hours", "GapHours", "Resets", "Source" }
        .ToDictionary(column => column, column => $"excluded.\"{column}\"");

    /// <summary>The records of chains; chains without signals have none.</summary>
    public static async Task<Dictionary<int, RunningLog>> RunningAsync(
        this WearDb db, IReadOnlyCollection<int> chainIds, CancellationToken ct = default)
    {
        var days = await db.RunDays.AsNoTracking().Where(d => EF.Parameter(chainIds).Contains(d.ChainId)).OrderBy(d => d.From)
            .ToListAsync(ct);
        return days.GroupBy(d => d.ChainId)
            .ToDictionary(g => g.Key,
                g => new RunningLog([.. g.Where(d => d.To > d.From)
                    .Select(d => new RunStretch(d.From, d.To, d.Hours, d.CounterJumped))]));
    }

    /// <summary>Keeps days inside the current transaction, in place of what was concluded of them before.</summary>
    public static Task KeepRunDaysAsync(this WearDb db, IEnumerable<RunDayRow> days, CancellationToken ct = default) =>
        db.MergeAsync([.. days.OrderBy(d => d.ChainId).ThenBy(d => d.Day)], Anew, ct);
}
