using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains.Families;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>A planner works through the notices of a line: acknowledges, assigns, snoozes, comments.</summary>
public sealed class NoticeWorkTests(Screen screen)
{
    [Fact]
    public async Task A_notice_is_acknowledged_assigned_and_commented_asks_again_and_is_snoozed_and_found_by_its_standing()
    {
        await FillAsync(screen.Host.Services, "Notice hall", "NOTE");
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/notices?line=" + Uri.EscapeDataString("Notice hall"));
        var worn = Item(page, "NOTE-1");
        await Assertions.Expect(worn).ToContainTextAsync("act now");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Acknowledge the notice of NOTE-1" }).ClickAsync();
        await Assertions.Expect(worn).ToContainTextAsync("acknowledged");
        await Assertions.Expect(worn).Not.ToContainTextAsync("act now");

        await worn.GetByRole(AriaRole.Button, new() { Name = "Assign, snooze, comment: NOTE-1" }).ClickAsync();
        await worn.GetByLabel("Assign to").FillAsync("Ben");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Assign", Exact = true }).ClickAsync();
        await Assertions.Expect(worn).ToContainTextAsync("assigned to Ben");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Assign, snooze, comment: NOTE-1" }).ClickAsync();
        await worn.GetByRole(AriaRole.Button, new() { Name = "Add comment" }).ClickAsync();
        await Assertions.Expect(worn.GetByRole(AriaRole.Alert)).ToHaveTextAsync("Write the comment.");
        await worn.GetByRole(AriaRole.Textbox, new() { Name = "Comment" }).FillAsync("The chain lies in the store.");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Add comment" }).ClickAsync();
        await Assertions.Expect(worn).ToContainTextAsync("“The chain lies in the store.”");

        await page.GetByLabel("Standing").SelectOptionAsync(new SelectOptionValue { Label = "acknowledged" });
        await Assertions.Expect(Item(page, "NOTE-LIFT")).ToHaveCountAsync(0);
        await Assertions.Expect(worn).ToHaveCountAsync(1);
        await page.GetByLabel("Assigned to").SelectOptionAsync("Ben");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("assigned=Ben"));
        await worn.GetByRole(AriaRole.Button, new() { Name = "Let ask again: NOTE-1" }).ClickAsync();
        await Assertions.Expect(worn).ToHaveCountAsync(0);

        await page.GetByLabel("Standing").SelectOptionAsync(new SelectOptionValue { Label = "asks for a person" });
        await worn.GetByRole(AriaRole.Button, new() { Name = "Assign, snooze, comment: NOTE-1" }).ClickAsync();
        await worn.GetByLabel("Snooze until").FillAsync("2020-01-01");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Snooze", Exact = true }).ClickAsync();
        await Assertions.Expect(worn.GetByRole(AriaRole.Alert)).ToContainTextAsync("Give a day after today");
        await worn.GetByLabel("Snooze until").FillAsync(InAWeek());
        await worn.GetByRole(AriaRole.Button, new() { Name = "Snooze", Exact = true }).ClickAsync();
        await Assertions.Expect(worn).ToHaveCountAsync(0);
        await page.GetByLabel("Standing").SelectOptionAsync(new SelectOptionValue { Label = "snoozed" });
        await worn.GetByText("6 steps").Or(worn.GetByText("5 steps")).ClickAsync();
        await Assertions.Expect(worn.Locator(".notice-steps")).ToContainTextAsync("snoozed until");
        await desk.PictureAsync("notice-work");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(await desk.OverTheEdgeAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task On_the_phone_a_lifting_chain_that_is_to_be_taken_out_of_use_offers_no_snooze_and_acknowledged_it_asks_on()
    {
        await FillAsync(screen.Host.Services, "Lifting hall", "HELD");
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync("/notices?line=" + Uri.EscapeDataString("Lifting hall"));
        var lifting = Item(phone.Page, "HELD-LIFT");
        await lifting.GetByRole(AriaRole.Button, new() { Name = "Acknowledge the notice of HELD-LIFT" }).ClickAsync();
        await Assertions.Expect(lifting.GetByText("1 step")).ToBeVisibleAsync();
        await Assertions.Expect(lifting).ToContainTextAsync("act now");
        await lifting.GetByRole(AriaRole.Button, new() { Name = "Assign, snooze, comment: HELD-LIFT" }).ClickAsync();
        await Assertions.Expect(lifting).ToContainTextAsync("a competent person judges it");
        await Assertions.Expect(lifting.GetByLabel("Snooze until")).ToHaveCountAsync(0);
        await phone.PictureAsync("notice-lifting-phone");
        Assert.Empty(await phone.OverTheEdgeAsync());
        Assert.Empty(await phone.BarriersAsync());
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_cause_is_judged_real_taken_back_and_judged_a_false_alarm_which_stays()
    {
        await FillAsync(screen.Host.Services, "Judged hall", "JUDGED");
        await using var desk = await screen.AtDeskAsync();
        var hall = "/notices?line=" + Uri.EscapeDataString("Judged hall");
        await desk.GoAsync(hall);
        var worn = Item(desk.Page, "JUDGED-1");
        await worn.GetByRole(AriaRole.Button, new() { Name = "A real cause on JUDGED-1" }).ClickAsync();
        await Assertions.Expect(worn).ToContainTextAsync("a real cause");
        await worn.GetByRole(AriaRole.Button, new() { Name = "Take back the judgement on JUDGED-1" }).ClickAsync();
        await Assertions.Expect(worn).Not.ToContainTextAsync("a real cause");
        await worn.GetByRole(AriaRole.Button, new() { Name = "A false alarm on JUDGED-1" }).ClickAsync();
        await desk.GoAsync(hall);
        await Assertions.Expect(worn).ToContainTextAsync("a false alarm");
        await Assertions.Expect(worn.GetByRole(AriaRole.Button, new() { Name = "A real cause on JUDGED-1" })).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    private static ILocator Item(IPage page, string chain) => page.Locator(".notices > .notice", new() { HasText = chain });

    private static string InAWeek() => DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime).AddDays(7)
        .ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Two chains with a notice each, in a hall of their own: what one test does, another does not see.</summary>
    private static async Task FillAsync(IServiceProvider services, string hall, string prefix)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        ChainRow[] chains =
        [
            new() { Name = $"{prefix}-1", Line = hall, ChainType = "16B-1", PitchMm = 25.4, Pitches = 120 },
            new() { Name = $"{prefix}-LIFT", Line = hall, Family = ChainFamily.Named("leaf"), PitchMm = 19.05, Pitches = 60 },
        ];
        db.Chains.AddRange(chains);
        await db.SaveChangesAsync();
        db.Notices.AddRange(chains.Select(c => new NoticeRow
        {
            ChainId = c.Id,
            Kind = c.Family == ChainFamily.Usual ? NoticeKind.LimitNear : NoticeKind.OutOfUse,
            Urgent = true,
            Why = $"3.10 % of 3.0 % allowed; probability that the limit is exceeded: 95 %.",
            WhatToDo = $"Fit a new chain, and inspect the sprockets.",
            RaisedAt = now.AddDays(-2),
        }));
        await db.SaveChangesAsync();
    }
}
