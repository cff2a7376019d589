using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Storage;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What was refused is not done and not lost; what cannot be waits for a planner; what is not kept is said.</summary>
public sealed class RefusedEntryTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_chain_renamed_meanwhile_takes_what_was_entered_under_its_old_name()
    {
        var (id, _) = await plant.TakeInAsync("OLDNAME");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.Context.SetOfflineAsync(true);
        await page.MeasureAsync(id, "5000", "1234.5");
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 1");
        await using (var db = await screen.Host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct))
        {
            await db.Chains.Where(c => c.Id == id).ExecuteUpdateAsync(s => s.SetProperty(c => c.Name, "NEWNAME-1"), Ct);
        }

        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        Assert.Equal(6, (await plant.ReadingsAsync("NEWNAME-1")).Count);
    }

    [Fact]
    public async Task A_refused_lubrication_is_counted_in_red_not_done_and_moved_thrown_and_taken_back()
    {
        var (id, _) = await plant.TakeInAsync("REFUSE");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        // Refused: it says that it was lubricated in a month.
        await page.EvaluateAsync("""
            async id => {
              const { keepAll } = await import('/floor/outbox.js');
              await keepAll([{ kind: 'lubricate', path: '/api/v1/events', chain: 'REFUSE-1', chainId: id, words: 'Lubricated',
                body: { chain: 'REFUSE-1', chain_id: id, event: 'oiling', told_by: 'floor',
                  taken_at: new Date(Date.now() + 30 * 864e5).toISOString() } }]);
              await (await import('/floor/outbox.js')).send({ atOnce: true });
            }
            """, id);
        await page.ShowAsync("#/");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "1 entry to be checked" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".pick", new() { HasText = "REFUSE-1" })).Not.ToContainTextAsync("done");
        await phone.PictureAsync("floor-refused-round-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.ShowAsync("#/kept");
        await page.GetByRole(AriaRole.Button, new() { Name = "Throw it away" }).TapAsync();
        await Assertions.Expect(page.Locator(".entry.check")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Yes, throw it away" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).TapAsync();
        await Assertions.Expect(page.Locator(".entry.check")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "To the planner" }).TapAsync();
        await phone.PictureAsync("floor-refused-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Yes, hand it on" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.Locator(".entry.sent")).ToHaveCountAsync(1);
        await using var db = await screen.Host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var notices = await db.PlantNotices.ToListAsync(Ct);
        Assert.Contains(notices, n => n.Why.ToString().Contains("REFUSE-1", StringComparison.Ordinal)
            && n.Why.ToString().Contains("oiling", StringComparison.Ordinal));
    }

    // 1600 mm over 48 pitches of 25.4 mm: 100 (1600 - 1219.2)/1219.2 = 31.23 %.
    [Fact]
    public async Task What_no_chain_can_be_is_asked_about_far_from_Save_in_words_and_waits_for_a_planner()
    {
        var (id, _) = await plant.TakeInAsync("CANNOT");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.ShowAsync($"#/chain/{id}/measure");
        await page.GetByLabel("Hour counter").FillAsync("5000");
        await page.GetByLabel("Length", new() { Exact = true }).FillAsync("1600");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(page.GetByText("three one point two three percent")).ToBeVisibleAsync();
        await phone.PictureAsync("floor-cannot-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        var saveAt = (await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).BoundingBoxAsync())!;
        var keep = page.GetByRole(AriaRole.Button, new() { Name = "Keep for planner" });
        var keepAt = (await keep.BoundingBoxAsync())!;
        Assert.True(keepAt.Y + keepAt.Height < saveAt.Y, "What confirms stands where Save stands.");
        await keep.TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToBeVisibleAsync();
        await page.ShowAsync("#/kept");
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.GetByText("It waits for a planner.")).ToBeVisibleAsync();
        var told = (await plant.ReadingsAsync("CANNOT-1"))[^1];
        Assert.Equal("waiting", told.GetProperty("standing").GetString());
    }

    [Fact]
    public async Task An_undo_within_ten_seconds_keeps_nothing_and_brings_back_what_was_typed()
    {
        var (id, _) = await plant.TakeInAsync("UNDO");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.MeasureAsync(id, "5000", "1234.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).TapAsync();
        await Assertions.Expect(page.GetByText("Undone: nothing was kept.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByLabel("Length", new() { Exact = true })).ToHaveValueAsync("1234.5");
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        await page.ReloadAsync(); // what is typed outlives the page
        await Assertions.Expect(page.GetByLabel("Length", new() { Exact = true })).ToHaveValueAsync("1234.5");
        Assert.Equal(5, (await plant.ReadingsAsync("UNDO-1")).Count);
    }

    [Fact]
    public async Task A_full_memory_is_told_with_the_values_to_write_down()
    {
        var (id, _) = await plant.TakeInAsync("FULL");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.ShowAsync($"#/chain/{id}/measure");
        await page.GetByLabel("Hour counter").FillAsync("5000");
        await page.GetByLabel("Length", new() { Exact = true }).FillAsync("1234.5");
        // What the browser does when its disk is full.
        await page.EvaluateAsync("""
            () => {
              const put = IDBObjectStore.prototype.put;
              IDBObjectStore.prototype.put = function (...told) {
                if (this.name === 'entries') throw new DOMException('full', 'QuotaExceededError');
                return put.apply(this, told);
              };
            }
            """);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "NOT kept: write it down" }))
            .ToContainTextAsync("1234.5");
        await Assertions.Expect(page.GetByLabel("Length", new() { Exact = true })).ToHaveValueAsync("1234.5");
        await phone.PictureAsync("floor-not-kept-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
    }

    private async Task<Visit> OpenAsync()
    {
        var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        return phone;
    }
}
