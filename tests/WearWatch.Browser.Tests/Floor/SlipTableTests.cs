using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Entries;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Each kind of slip typed at the entry page and on the phone: it is asked about, the answer puts it right, and nothing has
/// moved.
/// </summary>
public sealed class SlipTableTests(Screen screen, StillPlant still) : IClassFixture<StillPlant>
{
    private readonly FloorPlant plant = new(screen, still);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public void Each_kind_of_slip_stands_in_the_table() =>
        Assert.Equal(Enum.GetValues<SlipKind>(), SlipRow.All.Select(r => r.Kind).Distinct().Order());

    [Fact]
    public async Task Each_slip_typed_at_the_entry_page_is_asked_about_and_nothing_has_moved()
    {
        await SlipPlant.TakeInAsync(still.Host.Services, "SLIPDESK");
        var before = await StandAsync("SLIPDESK");
        await using var desk = await screen.AtDeskAsync(address: still.Address);
        foreach (var rows in SlipRow.All.GroupBy(r => r.Chain))
        {
            await desk.GoAsync($"/enter?chain=SLIPDESK-{rows.Key}");
            await AskAsync(desk.Page, "Taken at", rows);
        }

        Assert.Equal(before, await StandAsync("SLIPDESK"));
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task Each_slip_typed_on_the_phone_is_asked_about_and_nothing_has_moved()
    {
        await SlipPlant.TakeInAsync(still.Host.Services, "SLIPFLOOR");
        var ids = await plant.IdsAsync();
        var before = await StandAsync("SLIPFLOOR");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{still.Address}/floor/");
        await phone.Page.ReadyAsync();
        foreach (var rows in SlipRow.All.GroupBy(r => r.Chain))
        {
            await phone.Page.ShowAsync($"#/chain/{ids[$"SLIPFLOOR-{rows.Key}"]}/measure");
            await AskAsync(phone.Page, "Measured at", rows);
        }

        Assert.Equal(before, await StandAsync("SLIPFLOOR"));
        Assert.Empty(phone.Complaints);
    }

    private async Task AskAsync(IPage page, string taken, IEnumerable<SlipRow> rows)
    {
        var slips = page.Locator(".slips");
        foreach (var row in rows)
        {
            await page.GetByLabel("Hour counter").FillAsync(row.Counter);
            await page.GetByLabel("Pitches", new() { Exact = true }).FillAsync(row.Pitches);
            await page.GetByLabel("Length", new() { Exact = true }).FillAsync(row.Length);
            if (row.Place.Length > 0) await FillMoreAsync(page, "Place on the chain", row.Place);
            if (row.DaysAgo is { } days) await FillMoreAsync(page, taken, DaysAgo(days));
            await Assertions.Expect(slips).ToContainTextAsync(row.Asked);
            if (row.Kind.IsWithoutRecord())
            {
                await Assertions.Expect(slips.GetByRole(AriaRole.Link, new() { NameRegex = Saying(row.Asked) }))
                    .ToContainTextAsync("record it");
            }

            if (row.Becomes.Length > 0)
            {
                await slips.GetByRole(AriaRole.Button, new() { NameRegex = Saying(row.Asked) }).First.ClickAsync();
                await Assertions.Expect(row.Kind.IsOfCounter() ? page.GetByLabel("Hour counter")
                    : page.GetByLabel(row.Kind == SlipKind.PitchesMiscounted ? "Pitches" : "Length", new() { Exact = true }))
                    .ToHaveValueAsync(row.Becomes);
                await Assertions.Expect(slips.Filter(new() { HasText = row.Asked })).ToHaveCountAsync(0);
            }
        }
    }

    /// <summary>Fills a field of those that are folded away; the phone folds them again when an answer is taken.</summary>
    private static async Task FillMoreAsync(IPage page, string label, string text)
    {
        if (!await page.GetByLabel(label).IsVisibleAsync()) await page.Locator("details.more summary").ClickAsync();
        await page.GetByLabel(label).FillAsync(text);
    }

    private static Regex Saying(string asked) => new(Regex.Escape(asked), RegexOptions.IgnoreCase);

    private string DaysAgo(int days) => still.Host.Services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(-days)
        .ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The early dates of the plant's chains, and how many readings they have.</summary>
    private async Task<List<string>> StandAsync(string name)
    {
        var stand = new List<string>();
        for (var chain = 1; chain <= 4; chain++)
        {
            stand.Add($"{await plant.EarlyDateAsync($"{name}-{chain}", Ct)} "
                + $"{(await plant.ReadingsAsync($"{name}-{chain}")).Count}");
        }

        return stand;
    }
}
