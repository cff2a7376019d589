using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>Looking and doing at a chain without signal: all of it arrives when there is some.</summary>
public sealed class WorkTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_look_with_a_photo_and_an_oiling_without_signal_arrive_when_there_is_some()
    {
        var (id, _) = await plant.TakeInAsync("SEEN");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.ShowAsync($"#/chain/{id}/inspect");
        var dry = phone.Page.Locator(".point", new() { HasText = "red-brown" });
        await dry.GetByRole(AriaRole.Radio, new() { Name = "found", Exact = true }).TapAsync();
        await dry.GetByLabel("Note").FillAsync("at the infeed");
        await dry.GetByLabel("Photo").SetInputFilesAsync(
            new FilePayload { Name = "joint.png", MimeType = "image/png", Buffer = await phone.Page.ScreenshotAsync() });
        await Assertions.Expect(dry.GetByText("Photo kept")).ToBeVisibleAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "All the rest is in order" }).TapAsync();
        await phone.PictureAsync("floor-look-page-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("1 of 9 points found");

        await phone.Page.ShowAsync($"#/chain/{id}/do?what=oiling");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Lubricant", new() { Exact = true }).FillAsync("ISO VG 150");
        await phone.PictureAsync("floor-do-phone", whole: false);
        await phone.Page.EvaluateAsync("scrollTo(0, 0)"); // a link half behind the head that stays is half a target
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: lubricated" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("next lubrication");

        await phone.Page.ShowAsync($"#/chain/{id}/do?what=replacement");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5001");
        await phone.Page.GetByLabel("Lot of the new chain").FillAsync("L-77");
        await phone.Page.GetByLabel("the old chain broke while it ran").CheckAsync();
        await phone.Page.GetByLabel("Pitches of the new chain").FillAsync("118");
        await phone.PictureAsync("floor-replacement-phone", whole: false);
        await phone.Page.GetByLabel("Its length when new").FillAsync("1219.6");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("starts at 0 h");
        await phone.Page.Context.SetOfflineAsync(false);
        await SentAsync(phone.Page, 5);

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var look = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/inspections", Ct))[0];
        var finding = look.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("found").GetBoolean());
        Assert.Equal("at the infeed", finding.GetProperty("note").GetString());
        Assert.Equal(1, finding.GetProperty("photos").GetArrayLength());
        var events = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/events", Ct)).EnumerateArray().ToList();
        Assert.Contains(events, e => e.GetProperty("event").GetString() == "oiling"
            && e.GetProperty("oil_grade").GetString() == "ISO VG 150");
        Assert.Contains(events, e => e.GetProperty("event").GetString() == "replacement"
            && e.GetProperty("lot").GetString() == "L-77" && e.GetProperty("broke").GetBoolean()
            && e.GetProperty("new_pitches").GetInt32() == 118 && e.GetProperty("note").GetString() == "");
        // The new chain begins its track with its length when new, 0.03 %, and the run-in that is to come, about 0.2 %; the old
        // one had 1 %.
        var forecast = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/forecast", Ct);
        Assert.Equal(1, forecast.GetProperty("readings_used").GetInt32());
        Assert.InRange(forecast.GetProperty("elongation_pct").GetDouble(), 0, 0.4);
        await phone.Page.GotoAsync($"{screen.Address}/chains/SEEN-1");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Link, new() { Name = "photo" })).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("118 pitches when new, the old chain broke, lot L-77")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Tensioning_shortening_a_new_wheel_and_a_new_counter_are_told_without_signal_too()
    {
        var (id, _) = await plant.TakeInAsync("DONE");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await RecordAsync("tensioned", ("Hour counter", "5000"), ("Take-up position", "35,5"));
        await RecordAsync("shortened", ("Hour counter", "5001"), ("Pitches taken out", "4"), ("Take-up position", "2"));
        await RecordAsync("sprocket replaced", ("Hour counter", "5002"), ("Teeth of the new sprocket", "21"));
        await RecordAsync("counter replaced", ("Hour counter before", "5003"), ("Hour counter since", "12"));
        await phone.Page.Context.SetOfflineAsync(false);
        await SentAsync(phone.Page, 4);

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var events = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/DONE-1/events", Ct)).EnumerateArray()
            .Select(e => (e.GetProperty("event").GetString()!, e.GetProperty("counter_h_before").GetDouble(),
                e.GetProperty("counter_h_after").GetDouble(), e.GetProperty("note").GetString()!,
                e.GetProperty("pitches_out").ToString(), e.GetProperty("take_up_mm").ToString(),
                e.GetProperty("new_teeth").ToString()))
            .TakeLast(4);
        Assert.Equal(
            [("tensioned", 5000, 5000, "", "", "35.5", ""), ("shortened", 5001, 5001, "", "4", "2", ""),
                ("sprocket_replaced", 5002, 5002, "", "", "", "21"), ("meter_reset", 5003, 12, "", "", "", "")], events);

        async Task RecordAsync(string work, params (string Label, string Text)[] fields)
        {
            var kind = work switch { "sprocket replaced" => "sprocket_replaced", "counter replaced" => "meter_reset", _ => work };
            await phone.Page.ShowAsync($"#/chain/{id}/do?what={kind}");
            foreach (var (label, text) in fields) await phone.Page.GetByLabel(label).FillAsync(text);
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: " + work }).TapAsync();
            await Assertions.Expect(phone.Page.Locator(".saved")).ToBeVisibleAsync();
        }
    }

    [Fact]
    public async Task A_shortening_without_its_pitches_or_with_a_take_up_that_cannot_be_is_not_kept()
    {
        var (id, _) = await plant.TakeInAsync("SHORT");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.ShowAsync($"#/chain/{id}/do?what=shortened");
        await phone.Page.GetByLabel("Pitches taken out").FillAsync("");
        await phone.Page.GetByLabel("Take-up position").FillAsync("far");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: shortened" }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("A whole number of pitches, fewer than the chain has.")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("Millimetres such as 35")).ToBeVisibleAsync();
        await phone.PictureAsync("floor-shortened-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        Assert.Equal(
            0, await phone.Page.EvaluateAsync<int>("import('/floor/store.js').then(s => s.entries()).then(all => all.length)"));
    }

    [Fact]
    public async Task A_reading_in_inches_is_kept_so_with_the_take_up_and_the_next_one_begins_in_inches()
    {
        var (id, _) = await plant.TakeInAsync("INCH");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.ShowAsync($"#/chain/{id}/measure");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByRole(AriaRole.Radio, new() { Name = "inch" }).CheckAsync();
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("48 19/32"); // 1234.28 mm
        await phone.Page.GetByText("Temperature, place, take-up").TapAsync();
        await phone.Page.GetByLabel("Take-up position").FillAsync("35.5");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToBeVisibleAsync();
        await SentAsync(phone.Page, 1);
        var told = (await plant.ReadingsAsync("INCH-1"))[^1];
        Assert.Equal(
            ("48 19/32", "in", "35.5"),
            (told.GetProperty("length").GetString(), told.GetProperty("unit").GetString(),
                told.GetProperty("take_up_mm").ToString()));
        await phone.Page.EvaluateAsync("import('/floor/pack.js').then(p => p.loadPack({ anew: true }))");
        await phone.Page.ShowAsync($"#/chain/{id}/measure");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Radio, new() { Name = "inch" })).ToBeCheckedAsync();
    }

    /// <summary>Sends what the phone keeps, and waits until so many entries are all sent.</summary>
    private static async Task SentAsync(IPage page, int entries)
    {
        await page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send({ atOnce: true }))");
        await page.WaitForFunctionAsync(
            "count => import('/floor/store.js').then(s => s.entries()).then(all => all.length === count && all.every(e => "
            + "e.state === 'sent'))", entries);
    }
}
