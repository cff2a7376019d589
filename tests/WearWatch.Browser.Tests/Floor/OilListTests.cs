using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What is to be lubricated: one tap at a chain that is oiled by hand, the usual screens at the others.</summary>
public sealed class OilListTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task One_tap_without_signal_records_what_is_usual_can_be_undone_and_is_done_once_the_server_has_it()
    {
        await TakeInAsync("CAN", "Can hall");
        await using var phone = await OpenAsync("Pia");
        var page = phone.Page;
        await page.Context.SetOfflineAsync(true);
        await page.ShowAsync("#/oil");
        var row = Row(page, "CAN-HAND");
        await Assertions.Expect(row).ToContainTextAsync("by hand · ISO VG 150 · 20 ml");
        var due = page.GetByRole(AriaRole.Heading, new() { Name = "Due", Exact = true });
        await Assertions.Expect(page.Locator("section", new() { Has = due })).ToContainTextAsync("CAN-HAND");
        await phone.PictureAsync("floor-oil-phone", whole: false);
        var done = row.GetByRole(AriaRole.Button, new() { Name = "Lubricated: CAN-HAND" });
        await done.TapAsync();
        await Assertions.Expect(row).ToContainTextAsync("kept here, not sent yet");
        await Assertions.Expect(done).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).TapAsync();
        await Assertions.Expect(page.GetByText("Undone: nothing was kept.")).ToBeVisibleAsync();
        Assert.Equal(0, await KeptAsync(page));
        await done.TapAsync();
        await Assertions.Expect(page.Locator(".undo")).ToContainTextAsync("CAN-HAND: Lubricated");
        Assert.Equal(1, await KeptAsync(page));
        Assert.Empty(await phone.BarriersAsync());
        await page.Context.SetOfflineAsync(false);
        await SendAsync(page);
        await page.EvaluateAsync("import('/floor/pack.js').then(p => p.loadPack({ anew: true }))");
        await page.ShowAsync("#/oil");
        await Assertions.Expect(page.Locator("section", new() { HasText = "Done today" })).ToContainTextAsync("CAN-HAND");
        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var events = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/CAN-HAND/events", Ct)).EnumerateArray();
        var told = events.Last();
        Assert.Equal(
            ("oiling", "hand", "ISO VG 150", 20),
            (told.GetProperty("event").GetString(), told.GetProperty("oil_method").GetString(),
                told.GetProperty("oil_grade").GetString(), told.GetProperty("oil_amount_ml").GetDouble()));
    }

    [Fact]
    public async Task A_lubricator_is_inspected_and_a_chain_that_lifts_is_entered_below_its_caution()
    {
        await TakeInAsync("CARE", "Care hall");
        await using var phone = await OpenAsync("Rut");
        var page = phone.Page;
        await page.ShowAsync("#/oil");
        await Assertions.Expect(Row(page, "CARE-AUTO")).ToContainTextAsync("fill level and the working of the oiler");
        await Assertions.Expect(Row(page, "CARE-AUTO").GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
        await Assertions.Expect(Row(page, "CARE-LIFT").GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".caution").First).ToContainTextAsync("Stop, isolate, lock and tag");
        await Row(page, "CARE-LIFT").GetByRole(AriaRole.Link, new() { Name = "Record it: CARE-LIFT" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Record: lubricated" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".caution")).ToContainTextAsync("Lower and block the load first");
        await page.ShowAsync("#/oil");
        await Row(page, "CARE-AUTO").GetByRole(AriaRole.Link, new() { Name = "Inspect: CARE-AUTO" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "All the rest is in order" }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToBeVisibleAsync();
        // Who has inspected the chain has seen to its lubricator.
        await page.ShowAsync("#/oil");
        await Assertions.Expect(Row(page, "CARE-AUTO")).ToContainTextAsync("lubricate, kept here, not sent yet");
    }

    [Fact]
    public async Task The_lines_of_the_own_round_come_first_and_what_was_refused_stands_on_top_and_is_not_done()
    {
        await TakeInAsync("MINE", "My hall");
        await TakeInAsync("THEIRS", "Their hall");
        await using var phone = await OpenAsync("Oda");
        var page = phone.Page;
        await page.ShowAsync("#/oil");
        await Assertions.Expect(Row(page, "THEIRS-HAND")).ToBeVisibleAsync();
        await page.ShowAsync("#/");
        await page.Locator(".line", new() { HasText = "My hall" }).GetByRole(AriaRole.Button, new() { Name = "I take it" })
            .TapAsync();
        await Assertions.Expect(page.GetByText("Taken by Oda.")).ToBeVisibleAsync();
        await page.ShowAsync("#/oil");
        await Assertions.Expect(page.GetByText("Your round: My hall.")).ToBeVisibleAsync();
        await Assertions.Expect(Row(page, "MINE-HAND")).ToBeVisibleAsync();
        await Assertions.Expect(Row(page, "THEIRS-HAND")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Link, new() { Name = "All lines" }).TapAsync();
        await Assertions.Expect(Row(page, "THEIRS-HAND")).ToBeVisibleAsync();

        await page.RouteAsync("**/api/v1/events", route => route.FulfillAsync(new()
        {
            Status = 422,
            ContentType = "application/problem+json",
            Body = """{"title":"The counter runs backwards."}""",
        }));
        await Row(page, "THEIRS-HAND").GetByRole(AriaRole.Button).TapAsync();
        await Assertions.Expect(Row(page, "THEIRS-HAND")).ToContainTextAsync("kept here, not sent yet");
        await SendAsync(page);
        await page.ShowAsync("#/oil?lines=all");
        await Assertions.Expect(page.Locator(".to-check")).ToContainTextAsync(
            "THEIRS-HAND Lubricated: The counter runs backwards.");
        await Assertions.Expect(Row(page, "THEIRS-HAND").GetByRole(AriaRole.Button)).ToBeVisibleAsync();
    }

    private static ILocator Row(IPage page, string chain) => page.Locator(".oil", new() { HasText = chain });

    private static Task<int> KeptAsync(IPage page) =>
        page.EvaluateAsync<int>("import('/floor/store.js').then(s => s.entries()).then(all => all.length)");

    private static async Task SendAsync(IPage page) =>
        await page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send({ atOnce: true }))");

    /// <summary>A phone of a person whose name no other test has: a round taken there is not hers.</summary>
    private async Task<Visit> OpenAsync(string name)
    {
        var phone = await plant.PhoneAsync();
        await phone.Page.AddInitScriptAsync($"localStorage.setItem('wearwatch-name', '{name}');");
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        return phone;
    }

    /// <summary>Three chains of a line: one that is oiled by hand, one with a lubricator, one that lifts.</summary>
    private async Task TakeInAsync(string name, string line)
    {
        var report = await screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [
                File("chains.csv", $"""
                    chain,line,position,family,pitch_mm,pitches,fitted_at,fitted_counter_h,lubrication,oil_method,oil_grade,lifts
                    {name}-HAND,{line},drive,roller,25.4,120,2025-12-01T00:00:00Z,0,manual,hand,ISO VG 150,no
                    {name}-AUTO,{line},oven,roller,25.4,120,2025-12-01T00:00:00Z,0,auto,lubricator,,no
                    {name}-LIFT,{line},mast,leaf,25.4,120,2025-12-01T00:00:00Z,0,manual,hand,ISO VG 150,yes

                    """),
                File("events.csv", $"""
                    chain,event,taken_at,counter_h_before,counter_h_after,oil_method,oil_grade,oil_amount_ml
                    {name}-HAND,oiling,2026-03-15T00:00:00Z,2400,2400,hand,ISO VG 150,20

                    """),
            ], ct: Ct);
        Assert.All(report.Files, file => Assert.Empty(file.Remarks));
    }

    private static ImportFile File(string name, string text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" };
}
