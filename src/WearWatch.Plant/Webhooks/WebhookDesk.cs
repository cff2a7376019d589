using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Plant.People;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Keeps the addresses to which webhooks go, and their secrets.</summary>
public sealed class WebhookDesk(
    IDbContextFactory<WearDb> databases, WebhookHosts hosts, SecurityLog log, IOptions<WebhookOptions> options,
    TimeProvider clock)
{
    /// <summary>What can be chosen; a test goes to whom it is sent.</summary>
    public static IReadOnlyList<WebhookEventKind> Kinds { get; } =
        [.. Enum.GetValues<WebhookEventKind>().Where(k => k != WebhookEventKind.Test)];

    /// <summary>One of them; null when there is none of that number.</summary>
    public async Task<WebhookAddressRow?> FindAsync(int id, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.WebhookAddresses.AsNoTracking().SingleOrDefaultAsync(a => a.Id == id, ct);
    }

    /// <summary>Adds an address. The answer holds its secret for the only time.</summary>
    public async Task<Made> AddAsync(NewWebhook entered, string by, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await FaultAsync(db, entered, id: 0, ct) is { } fault) return new Made("", fault);
        if (!await db.WebhookAddresses.AnyAsync(ct)) await WebhookStart.FromNowAsync(db, now, ct);
        var row = new WebhookAddressRow
        {
            Name = entered.Name,
            Url = entered.Url,
            Secret = WebhookSecret.Make(),
            AddedBy = by,
            AddedAt = now,
            NextTryAt = now,
        };
        Take(row, entered, now);
        db.WebhookAddresses.Add(row);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        await log.AddAsync(SecurityEventKind.WebhookAdded, About(row), ct: ct);
        return new Made(row.Secret, null);
    }

    /// <summary>Changes an address. Says what stands against it; null when it is kept.</summary>
    public async Task<Phrase?> ChangeAsync(int id, NewWebhook entered, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.WebhookAddresses.FindAsync([id], ct) is not { } row) return Gone;
        if (await FaultAsync(db, entered, id, ct) is { } fault) return fault;
        Take(row, entered, clock.GetUtcNow());
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        await log.AddAsync(SecurityEventKind.WebhookChanged, About(row), ct: ct);
        return null;
    }

    /// <summary>Makes a new secret, shown this once. The one before signs beside it for a day.</summary>
    public async Task<Made> RenewSecretAsync(int id, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.WebhookAddresses.FindAsync([id], ct) is not { } row) return new Made("", Gone);
        (row.FormerSecret, row.FormerUntil) = (row.Secret, clock.GetUtcNow() + WebhookSecret.Overlap);
        row.Secret = WebhookSecret.Make();
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        await log.AddAsync(SecurityEventKind.WebhookSecretRenewed, About(row), ct: ct);
        return new Made(row.Secret, null);
    }

    /// <summary>Removes an address with its secret, what waits for it, and its part of the log; one that is paused.</summary>
    /// <returns>What stands against it; null when it is gone.</returns>
    public async Task<Phrase?> RemoveAsync(int id, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.WebhookAddresses.FindAsync([id], ct) is not { } row) return Gone;
        if (!row.IsPaused) return $"Pause it first. What waits for it is lost when it is removed.";
        db.WebhookAddresses.Remove(row);
        await db.SaveChangesAsync(ct);
        await log.AddAsync(SecurityEventKind.WebhookRemoved, About(row), ct: ct);
        return null;
    }

    /// <summary>Sends an event that only shows that webhooks arrive.</summary>
    public async Task SendTestAsync(int id, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        var test = new WebhookEvent(
            WebhookEvent.IdOf("test", now), WebhookEventKind.Test, now, "test", "",
            new JsonObject { ["text"] = "Webhooks from WearWatch reach you." });
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await db.WebhookDeliveries.AnyAsync(d => d.AddressId == id && d.EventId == test.Id, ct)) return;
        if (await db.WebhookAddresses.FindAsync([id], ct) is not { } row) return;
        db.WebhookDeliveries.Add(test.To(id, test.Body(options.Value.Source), now));
        row.NextTryAt = now;
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }

    private static Phrase Gone => $"This address was removed.";

    private static void Take(WebhookAddressRow row, NewWebhook entered, DateTimeOffset now)
    {
        (row.Name, row.Url, row.Kinds, row.Lines) = (entered.Name, entered.Url, entered.Kinds, entered.Lines);
        (row.IsPaused, row.PausedFor, row.Failures, row.NextTryAt) = (entered.IsPaused, Phrase.None, 0, now);
    }

    /// <summary>What the security log says of it: no path, as some receivers have a secret there.</summary>
    private static string About(WebhookAddressRow row) => $"{row.Name} ({new Uri(row.Url).IdnHost})";

    private async Task<Phrase?> FaultAsync(WearDb db, NewWebhook entered, int id, CancellationToken ct) =>
        PersonName.Fault(entered.Name) ?? hosts.FaultOf(entered.Url)
        ?? (await db.WebhookAddresses.AnyAsync(a => a.Name == entered.Name && a.Id != id, ct)
            ? Phrase.Of($"There is an address '{entered.Name}' already.")
            : null);

    /// <summary>A secret that was made, or why none was.</summary>
    /// <param name="Secret">The secret, shown this once; empty when none was made.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Made(string Secret, Phrase? Fault);
}
