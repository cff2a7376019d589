using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Notices;
using WearWatch.Plant.Sending;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>The events that wait for receivers, in order for each: here they are safe however long one is away.</summary>
/// <remarks>
/// Sent at least once: a process that is killed after the receiver took an event and before that was kept sends it again under
/// the same id. What fails holds up what comes after it at the same address, so that a receiver hears things in their order.
/// </remarks>
public sealed class WebhookBox(IDbContextFactory<WearDb> databases, PlantNoticeDesk notices, TimeProvider clock)
{
    /// <summary>While somebody sends to an address nobody else does; who dies over it leaves it free after this.</summary>
    private static readonly TimeSpan heldFor = TimeSpan.FromMinutes(1);

    private static readonly TimeSpan longestAsked = TimeSpan.FromDays(1);
    private static readonly TimeSpan keptFor = TimeSpan.FromDays(90);
    private static readonly Backoff backoff = new(TimeSpan.FromSeconds(5), TimeSpan.FromHours(1));

    /// <summary>For how long an event is tried.</summary>
    public static TimeSpan TriedFor { get; } = TimeSpan.FromDays(3);

    /// <summary>Takes the next event of an address whose time has come; null for none.</summary>
    public async Task<(WebhookAddressRow Address, WebhookDeliveryRow Delivery)?> TakeAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var now = clock.GetUtcNow();
        var waiting = db.WebhookDeliveries.Where(d => d.State == WebhookState.Waiting);
        while (await db.WebhookAddresses.AsNoTracking()
            .Where(a => !a.IsPaused && a.NextTryAt <= now && waiting.Any(d => d.AddressId == a.Id))
            .OrderBy(a => a.NextTryAt).ThenBy(a => a.Id).FirstOrDefaultAsync(ct) is { } address)
        {
            var taken = await db.WebhookAddresses
                .Where(a => a.Id == address.Id && a.NextTryAt == address.NextTryAt && !a.IsPaused)
                .ExecuteUpdateAsync(a => a.SetProperty(x => x.NextTryAt, now + heldFor), ct);
            if (taken == 1 && await waiting.AsNoTracking().Where(d => d.AddressId == address.Id).OrderBy(d => d.Id)
                .FirstOrDefaultAsync(ct) is { } delivery) return (address, delivery);
        }

        return null;
    }

    /// <summary>Keeps what became of a try.</summary>
    public async Task KeepAsync(WebhookAddressRow address, WebhookDeliveryRow delivery, DeliveryOutcome outcome)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync();
        await using var transaction = await db.Database.BeginTransactionAsync();
        if (await db.WebhookDeliveries.FindAsync(delivery.Id) is not { } row) return; // the address was removed meanwhile
        var at = await db.WebhookAddresses.SingleAsync(a => a.Id == address.Id);
        row.Tries++;
        var trouble = outcome switch
        {
            DeliveryOutcome.Taken taken => Take(at, row, taken, now),
            DeliveryOutcome.Unwanted unwanted => Pause(at, row, unwanted, now),
            DeliveryOutcome.Failed failed => Wait(at, row, failed, now),
            _ => throw new UnreachableException(),
        };
        if (trouble is not null)
        {
            await notices.RaiseAsync(db, PlantNoticeKind.WebhookStopped, trouble,
                $"Repair the receiver. Then send again what is missing, on the page Webhooks.", CancellationToken.None);
        }

        await db.SaveChangesAsync();
        await transaction.CommitAsync();
    }

    /// <summary>Sends an event once more, whatever became of it: in its place, before what waits.</summary>
    /// <returns>Whether there is such an event.</returns>
    public async Task<bool> SendAgainAsync(long deliveryId, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.WebhookDeliveries.FindAsync([deliveryId], ct) is not { } row) return false;
        (row.State, row.EndedAt, row.WaitsSince) = (WebhookState.Waiting, null, now);
        (await db.WebhookAddresses.SingleAsync(a => a.Id == row.AddressId, ct)).NextTryAt = now;
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return true;
    }

    /// <summary>The addresses that do not take events, with why.</summary>
    public async Task<IReadOnlyList<(string Name, Phrase Why)>> TroublesAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var failing = await db.WebhookAddresses.AsNoTracking().Where(a => a.Failures > 0).OrderBy(a => a.Name).ToListAsync(ct);
        var stopped = await db.WebhookAddresses.AsNoTracking().Where(a => a.IsPaused && a.Failures == 0).ToListAsync(ct);
        return
        [
            .. failing.Select(a => (a.Name, Phrase.Of($"{a.Failures} tries in a row have failed"))),
            .. stopped.Where(a => !a.PausedFor.IsEmpty).Select(a => (a.Name, a.PausedFor)),
        ];
    }

    /// <summary>Removes from the log what ended long ago.</summary>
    public async Task ThinAsync(CancellationToken ct = default)
    {
        var before = clock.GetUtcNow() - keptFor;
        await using var db = await databases.CreateDbContextAsync(ct);
        await db.WebhookDeliveries.Where(d => d.EndedAt < before).ExecuteDeleteAsync(ct);
    }

    private static Phrase? Take(WebhookAddressRow at, WebhookDeliveryRow row, DeliveryOutcome.Taken taken, DateTimeOffset now)
    {
        (row.State, row.EndedAt, row.Status, row.Fault) = (WebhookState.Delivered, now, taken.Status, Phrase.None);
        (at.Failures, at.NextTryAt) = (0, now);
        return null;
    }

    private static Phrase Pause(WebhookAddressRow at, WebhookDeliveryRow row, DeliveryOutcome.Unwanted no, DateTimeOffset now)
    {
        row.Status = no.Status;
        row.Fault = $"The receiver answered {no.Status}: it wants no more.";
        (at.IsPaused, at.PausedFor, at.NextTryAt) = (true, row.Fault, now);
        return Phrase.Of($"Webhooks to {at.Name} are paused. {row.Fault}");
    }

    private static Phrase? Wait(WebhookAddressRow at, WebhookDeliveryRow row, DeliveryOutcome.Failed failed, DateTimeOffset now)
    {
        (row.Status, row.Fault) = (failed.Status, failed.Why);
        var pause = backoff.After(at.Failures++, row.Id);
        if (failed.NotBefore is { } asked && asked > pause) pause = asked < longestAsked ? asked : longestAsked;
        at.NextTryAt = now + pause;
        if (now - row.WaitsSince < TriedFor) return null;
        (row.State, row.EndedAt) = (WebhookState.GivenUp, now);
        return Phrase.Of($"An event was given up, as {at.Name} did not take it within three days. {row.Fault}");
    }
}
