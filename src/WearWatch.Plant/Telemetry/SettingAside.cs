using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>Keeps messages that could not be understood or used, with the reason.</summary>
internal static class SettingAside
{
    /// <summary>
    /// Keeps messages inside the current transaction. One that was set aside before is counted, and waits again if it was
    /// settled.
    /// </summary>
    public static async Task KeepAsync(
        WearDb db, IReadOnlyCollection<(Arrival Arrival, Phrase Reason)> aside, DateTimeOffset now, CancellationToken ct)
    {
        if (aside.Count == 0) return;
        var rows = aside.GroupBy(a => Fingerprint(a.Arrival))
            .ToDictionary(g => g.Key, g => Row(g.Key, g.First().Arrival, g.Last().Reason, g.Count(), now));
        var added = await db.AddNewAsync(rows.Values, r => r.Fingerprint, ct);
        foreach (var again in rows.Values.Where(r => !added.Contains(r.Fingerprint)))
            await db.SetAside.Where(s => s.Fingerprint == again.Fingerprint).ExecuteUpdateAsync(
                set => set.SetProperty(s => s.Times, s => s.Times + again.Times).SetProperty(s => s.LastAt, now)
                    .SetProperty(s => s.Reason, again.Reason).SetProperty(s => s.Settlement, Settlement.Waiting), ct);
    }

    private static SetAsideRow Row(string fingerprint, Arrival arrival, Phrase reason, int times, DateTimeOffset now) => new()
    {
        Fingerprint = fingerprint,
        Topic = arrival.Topic,
        Payload = arrival.Payload[..Math.Min(arrival.Payload.Length, TelemetryText.LongestBytes + 1)].ToArray(),
        Reason = reason,
        Times = times,
        FirstAt = now,
        LastAt = now,
    };

    private static string Fingerprint(Arrival arrival)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(arrival.Topic + '\n'));
        hash.AppendData(arrival.Payload.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset()[..16]);
    }
}
