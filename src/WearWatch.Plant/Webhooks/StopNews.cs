using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Which coming shutdowns have other swaps by the saved plan than webhooks last said.</summary>
internal static class StopNews
{
    private static readonly Dictionary<int, long> none = [];

    /// <summary>Whether there is any.</summary>
    public static async Task<bool> IsThereAsync(WearDb db, DateTimeOffset now, CancellationToken ct) =>
        Changed(await PlannedAsync(db, now, ct), await db.WebhookStops.AsNoTracking().ToListAsync(ct), now).Any();

    /// <summary>Takes what there is, and keeps that it was said. In the transaction in which the events are written.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="plan">The saved plan, in the state that it has in this transaction.</param>
    /// <param name="now">The moment.</param>
    /// <param name="ct">Stops it.</param>
    public static async Task<IReadOnlyList<WebhookEvent>> TakeAsync(
        WearDb db, KeptPlanView plan, DateTimeOffset now, CancellationToken ct)
    {
        var (planned, said) = (await PlannedAsync(db, now, ct), await db.WebhookStops.ToListAsync(ct));
        var events = Changed(planned, said, now).Select(stop => Event(stop, plan, now)).ToList();
        foreach (var old in said)
        {
            if (planned.FirstOrDefault(p => p.WindowId == old.WindowId) is { } still) old.Swaps = still.Swaps;
            else db.WebhookStops.Remove(old);
        }

        db.WebhookStops.AddRange(planned.Where(p => said.All(s => s.WindowId != p.WindowId)).Select(Said));
        return events;
    }

    /// <summary>The coming shutdowns with swaps.</summary>
    public static async Task<IReadOnlyList<PlannedStop>> PlannedAsync(WearDb db, DateTimeOffset now, CancellationToken ct)
    {
        var swaps = await (
            from swap in db.PlannedSwaps
            where swap.Start > now && swap.WindowId != null
            join chain in db.Chains on swap.ChainId equals chain.Id
            select new { swap.Id, swap.ChainId, swap.WindowId, swap.Start, swap.End, chain.Line }).ToListAsync(ct);
        return
        [
            .. from swap in swaps
               group swap by swap.WindowId into stop
               let first = stop.First()
               orderby first.Start, stop.Key
               select new PlannedStop(stop.Key, first.Line, first.Start!.Value, first.End ?? first.Start.Value,
                   stop.ToDictionary(s => s.ChainId, s => s.Id)),
        ];
    }

    /// <summary>Those that have other swaps, and those from which all were called off before they began.</summary>
    private static IEnumerable<PlannedStop> Changed(
        IReadOnlyList<PlannedStop> planned, List<WebhookStopRow> said, DateTimeOffset now) =>
        planned.Where(p => said.Find(s => s.WindowId == p.WindowId)?.Swaps.SequenceEqual(p.Swaps) != true)
            .Concat(said.Where(s => s.Start > now && planned.All(p => p.WindowId != s.WindowId))
                .Select(s => new PlannedStop(s.WindowId, s.Line, s.Start, s.End, none)));

    /// <summary>What is remembered of a stop once it was said.</summary>
    public static WebhookStopRow Said(PlannedStop stop) =>
        new() { WindowId = stop.WindowId, Line = stop.Line, Start = stop.Start, End = stop.End, Swaps = stop.Swaps };

    private static WebhookEvent Event(PlannedStop stop, KeptPlanView plan, DateTimeOffset now)
    {
        var package = stop.SwapOf.Count == 0 ? null : WorkPackage.Of(plan, stop.WindowId);
        return new WebhookEvent(
            WebhookEvent.IdOf("stop-" + Convert.ToHexStringLower(HashOf(stop.WindowId)), now), WebhookEventKind.StopPlanned, now,
            stop.WindowId, stop.Line,
            JsonSerializer.SerializeToNode(StopPackageJson.Of(stop, package), WebhookJson.Default.StopPackageJson)!);
    }

    /// <summary>The id of a shutdown has letters that a header of HTTP cannot hold.</summary>
    private static ReadOnlySpan<byte> HashOf(string windowId) =>
        SHA256.HashData(Encoding.UTF8.GetBytes(windowId)).AsSpan(0, 8);
}
