using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>Each kind of slip typed once, at the entry page and on the phone: it is asked about, and nothing has moved.</summary>
public sealed class SlipTableTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    // 1,234.5 mm over 48 pitches at 5,000 h is what is to be expected.
    private static readonly (string Counter, string Pitches, string Length, string Asked)[] Slips =
    [
        ("5000", "48", "1243.5", "1234.5 mm, two digits swapped"),
        ("5000", "48", "124.5", "a digit left out"),
        ("5000", "48", "12345", "A tenth of it"),
        ("5000", "48", "48.602", "In inches"),
        ("5000", "48", "1.2345", "In metres"),
        ("5000", "48", "1244.5", "the 10 mm mark of the tape"),
        ("5000", "48", "1334.5", "the 100 mm mark of the tape"),
        ("5000", "47", "1234.5", "48 pitches instead of 47"),
        ("5000", "24", "1234.5", "48 pitches"),
        ("50003", "48", "1234.5", "its tenths read as hours"),
        ("55000", "48", "1234.5", "a digit struck twice"),
    ];

    private static LocatorAssertionsToContainTextOptions Patient => new() { Timeout = 60_000 };

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_slip_typed_at_the_entry_page_is_asked_about_and_nothing_has_moved()
    {
        await plant.TakeInAsync("SLIPDESK");
        var before = await plant.EarlyDateAsync("SLIPDESK-1", Ct);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/enter?chain=SLIPDESK-1");
        await AskAsync(desk.Page);
        Assert.Equal(before, await plant.EarlyDateAsync("SLIPDESK-1", Ct));
        Assert.Equal(5, (await plant.ReadingsAsync("SLIPDESK-1")).Count);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task Each_slip_typed_on_the_phone_is_asked_about_and_nothing_has_moved()
    {
        var (id, _) = await plant.TakeInAsync("SLIPFLOOR");
        var before = await plant.EarlyDateAsync("SLIPFLOOR-1", Ct);
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}/measure");
        await AskAsync(phone.Page);
        Assert.Equal(before, await plant.EarlyDateAsync("SLIPFLOOR-1", Ct));
        Assert.Equal(5, (await plant.ReadingsAsync("SLIPFLOOR-1")).Count);
        Assert.Empty(phone.Complaints);
    }

    private static async Task AskAsync(IPage page)
    {
        foreach (var (counter, pitches, length, asked) in Slips)
        {
            await page.GetByLabel("Hour counter").FillAsync(counter);
            await page.GetByLabel("Pitches", new() { Exact = true }).FillAsync(pitches);
            await page.GetByLabel("Length", new() { Exact = true }).FillAsync(length);
            await Assertions.Expect(page.Locator(".slips")).ToContainTextAsync(asked, Patient);
        }
    }
}
