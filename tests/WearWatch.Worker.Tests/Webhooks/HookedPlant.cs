using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>A plant with two chains on two lines, from which webhooks go to a receiver.</summary>
public sealed class HookedPlant : IAsyncDisposable
{
    private HookedPlant(TestPlant plant) => Plant = plant;

    public TestPlant Plant { get; }

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <param name="every">How often is looked, by the plant's clock.</param>
    public static async Task<HookedPlant> OpenAsync(string every = "00:00:05")
    {
        var plant = await TestPlant.OpenAsync(
            ("Webhooks:Loopback", "true"), ("Webhooks:Every", every), ("InboxEvery", "01:00:00"));
        await plant.AddChainAsync("C1", "line=Press");
        await plant.AddChainAsync("C2", "line=Dryer");
        return new HookedPlant(plant);
    }

    public T Get<T>()
        where T : notnull => Plant.Get<T>();

    /// <summary>Adds a receiver; its secret.</summary>
    public async Task<string> AddAsync(
        string url, string name = "orders", WebhookEventKind[]? kinds = null, string[]? lines = null)
    {
        var made = await Get<WebhookDesk>().AddAsync(
            new NewWebhook(name, url, kinds ?? [], lines ?? [], IsPaused: false), "Ada", Ct);
        Assert.Null(made.Fault);
        return made.Secret;
    }

    public async Task<WebhookAddressRow> AddressAsync(string name = "orders")
    {
        await using var db = Plant.Db();
        return await db.WebhookAddresses.SingleAsync(a => a.Name == name, Ct);
    }

    /// <summary>Raises a notice at a chain; its number.</summary>
    public async Task<long> RaiseAsync(string chain = "C1", NoticeKind kind = NoticeKind.LimitNear)
    {
        await using var db = Plant.Db();
        var row = new NoticeRow
        {
            ChainId = db.Chains.Single(c => c.Name == chain).Id,
            Kind = kind,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = Plant.Clock.GetUtcNow(),
        };
        db.Notices.Add(row);
        await db.SaveChangesAsync(Ct);
        return row.Id;
    }

    public async Task ChangeAsync(long notice, Action<NoticeRow> change)
    {
        Plant.Clock.Advance(TimeSpan.FromSeconds(1));
        await using var db = Plant.Db();
        change(await db.Notices.SingleAsync(n => n.Id == notice, Ct));
        await db.SaveChangesAsync(Ct);
    }

    public async Task<IReadOnlyList<WebhookDeliveryRow>> WrittenAsync()
    {
        await Get<WebhookWriter>().RunOnceAsync(Ct);
        await using var db = Plant.Db();
        return await db.WebhookDeliveries.AsNoTracking().OrderBy(d => d.Id).ToListAsync(Ct);
    }

    /// <summary>Lets the plant's clock go on until something has come about.</summary>
    public async Task UntilAsync(Func<bool> isSo, TimeSpan? step = null)
    {
        for (var i = 0; i < 600 && !isSo(); i++)
        {
            Plant.Clock.Advance(step ?? TimeSpan.FromSeconds(1));
            await Task.Delay(30, Ct);
        }

        Assert.True(isSo());
    }

    public ValueTask DisposeAsync() => Plant.DisposeAsync();
}
