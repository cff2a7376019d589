using WearWatch.Phrases;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>Receivers of webhooks and what was sent to them, for the lists of their pages; nothing is really sent.</summary>
internal static class SortedWebhooks
{
    public static async Task AddAsync(WearDb db, DateTimeOffset now)
    {
        var receivers = Enumerable.Range(0, 3).Select(i => new WebhookAddressRow
        {
            Name = $"Receiver {i}",
            Url = $"https://host{2 - i}.example.org/hooks",
            Kinds = [(WebhookEventKind)i],
            Secret = WebhookSecret.Make(),
            IsPaused = true,
            PausedFor = Phrase.Verbatim($"fault {i}"),
            AddedBy = "Ada",
            AddedAt = now,
        }).ToArray();
        db.WebhookMarks.Add(new WebhookMarkRow { NoticeId = long.MaxValue, EventId = long.MaxValue });
        db.WebhookAddresses.AddRange(receivers);
        await db.SaveChangesAsync();
        db.WebhookDeliveries.AddRange(Enumerable.Range(0, 9).Select(i => new WebhookDeliveryRow
        {
            AddressId = receivers[i % 3].Id,
            EventId = $"event-{i}",
            Kind = (WebhookEventKind)(i % 5),
            Subject = $"chain {8 - i}",
            Body = "{}",
            WrittenAt = now.AddMinutes(-i),
            WaitsSince = now,
            State = i is 0 or 1 or 3 ? WebhookState.Waiting : i == 8 ? WebhookState.GivenUp : WebhookState.Delivered,
            EndedAt = i is 0 or 1 or 3 ? null : now.AddHours(-i),
            Tries = i,
            Fault = i % 2 == 0 ? Phrase.None : Phrase.Verbatim($"fault {i}"),
        }));
        await db.SaveChangesAsync();
    }
}
