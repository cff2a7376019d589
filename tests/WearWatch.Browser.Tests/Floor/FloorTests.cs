using System.Diagnostics;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The technician's floor on a phone: from the label to the saved reading, and what is refused on the way.</summary>
public sealed class FloorTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static LocatorAssertionsToBeVisibleOptions Patient => new() { Timeout = 60_000 };

    // Taps: Measure, the counter, Next, Save. Digits are not counted.
    [Fact]
    public async Task A_scanned_label_leads_to_a_saved_reading_in_four_taps_and_the_digits()
    {
        var (id, mark) = await TakeInAsync("SCAN");
        await using var phone = await PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{mark}/{id}");
        await phone.Page.ReadyAsync();
        await phone.PictureAsync("floor-chain-phone", whole: false);
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).TapAsync();
        await phone.PictureAsync("floor-measure-begun-phone", whole: false);
        await phone.Page.GetByLabel("Hour counter").TapAsync();
        await phone.Page.TapDigitsAsync("5000");
        while (!await phone.Page.GetByLabel("Length", new() { Exact = true }).EvaluateAsync<bool>("e => e === document.activeElement"))
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Next field" }).TapAsync();
        await phone.Page.TapDigitsAsync("1234.5");
        await Assertions.Expect(phone.Page.Locator(".verdict .figure")).ToContainTextAsync("1.25");
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await phone.PictureAsync("floor-measure-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("The early date")).ToBeVisibleAsync(Patient);
        await phone.PictureAsync("floor-sent-phone", whole: false);
        Assert.Equal(6, (await ReadingsAsync("SCAN-1")).Count);
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task Another_plants_label_is_refused_and_opens_nothing()
    {
        var (id, mark) = await TakeInAsync("LABEL");
        await using var phone = await PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{(mark == "AAAA2222" ? "BBBB2222" : "AAAA2222")}/{id}");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "This label is of another plant" })).ToBeVisibleAsync(Patient);
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{mark}/999999");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "not in the register" })).ToBeVisibleAsync(Patient);
        Assert.Empty(await phone.BarriersAsync());
    }

    // 1260.1 mm over 49 pitches of 25.4 mm is 1.25 %, as is to be expected; told as 48 pitches it is 3.36 %.
    [Fact]
    public async Task A_miscount_is_recognised_with_signal_and_corrected_with_one_tap()
    {
        var (id, _) = await TakeInAsync("MISCOUNT");
        await using var phone = await PhoneAsync(dark: true);
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}/measure");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1260.1");
        var miscount = phone.Page.GetByRole(AriaRole.Button, new() { Name = "49 pitches instead of 48" });
        await Assertions.Expect(miscount).ToBeVisibleAsync(Patient);
        await phone.PictureAsync("floor-slip-phone-dark", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await miscount.TapAsync();
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await Assertions.Expect(phone.Page.Locator(".verdict .figure")).ToContainTextAsync("1.25");
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_doubted_reading_without_signal_is_kept_comes_back_and_is_put_right_with_one_tap()
    {
        var (id, _) = await TakeInAsync("COMEBACK");
        await using var phone = await PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.MeasureAsync(id, "5000", "1260.1");
        await phone.Page.ShowAsync("#/kept");
        await Assertions.Expect(phone.Page.Locator(".entry")).ToContainTextAsync("doubted");
        await Assertions.Expect(phone.Page.Locator(".entry[data-state=kept]")).ToHaveCountAsync(1);
        await phone.PictureAsync("floor-offline-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.Context.SetOfflineAsync(false);
        await phone.Page.ReloadAsync();
        await phone.Page.ReadyAsync();
        await phone.Page.WaitForFunctionAsync("() => /look 1/.test(document.getElementById('kept').textContent)", null, new() { Timeout = 60_000 });
        await phone.Page.ShowAsync("#/kept");
        await Assertions.Expect(phone.Page.GetByText("does not fit")).ToBeVisibleAsync();
        var miscount = phone.Page.GetByRole(AriaRole.Button, new() { Name = "49 pitches instead of 48" });
        await Assertions.Expect(miscount).ToBeVisibleAsync(Patient);
        await phone.PictureAsync("floor-look-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await miscount.TapAsync();
        await Assertions.Expect(phone.Page.Locator(".entry[data-state=sent]")).ToHaveCountAsync(2, new() { Timeout = 60_000 });
        Assert.Equal(49, (await ReadingsAsync("COMEBACK-1"))[^1].GetProperty("pitches").GetInt32());
    }

    // zbarimg knows nothing of the program that drew the code.
    [Fact]
    public async Task A_printed_label_is_read_by_another_program_and_leads_to_its_position()
    {
        var (id, mark) = await TakeInAsync("CODE");
        await using var desk = await screen.AtDeskAsync();
        await desk.Page.GotoAsync($"{screen.Address}/labels?chain=CODE-1");
        await desk.PictureAsync("labels-desk");
        var picture = Path.Combine(Directory.CreateTempSubdirectory("wearwatch-label-").FullName, "label.png");
        await desk.Page.Locator(".label svg").ScreenshotAsync(new() { Path = picture });
        using var reader = Process.Start(new ProcessStartInfo("zbarimg", ["-q", "--raw", picture]) { RedirectStandardOutput = true })!;
        Assert.Equal($"{screen.Address}/floor/at/{mark}/{id}", (await reader.StandardOutput.ReadToEndAsync(Ct)).Trim());
        Assert.Empty(await desk.BarriersAsync());
    }

    [Fact]
    public async Task The_round_of_the_day_is_taken_on_the_phone_and_planned_at_the_desk()
    {
        var (id, _) = await TakeInAsync("WALK");
        await using var phone = await PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        var line = phone.Page.Locator(".line", new() { HasText = "Pallet line" });
        await Assertions.Expect(line.GetByRole(AriaRole.Link, new() { Name = "WALK-1" })).ToBeVisibleAsync(Patient);
        await line.GetByRole(AriaRole.Button, new() { Name = "I take it" }).TapAsync();
        await Assertions.Expect(line.GetByRole(AriaRole.Button, new() { Name = "Give it back" })).ToBeVisibleAsync(Patient);
        await phone.PictureAsync("floor-round-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/rounds");
        await Assertions.Expect(desk.Page.GetByText("taken by").First).ToBeVisibleAsync(Patient);
        await desk.PictureAsync("rounds-desk");
        Assert.Empty(await desk.BarriersAsync());
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await phone.Page.ShowAsync("#/");
        await Assertions.Expect(line.GetByText("measure, done").First).ToBeVisibleAsync(Patient);
        Assert.Empty(phone.Complaints);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_look_with_a_photo_and_an_oiling_without_signal_arrive_when_there_is_some()
    {
        var (id, _) = await TakeInAsync("SEEN");
        await using var phone = await PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.ShowAsync($"#/chain/{id}/look");
        var dry = phone.Page.Locator(".point", new() { HasText = "red-brown" });
        await dry.GetByRole(AriaRole.Radio, new() { Name = "found", Exact = true }).TapAsync();
        await dry.GetByLabel("Note").FillAsync("at the infeed");
        await dry.GetByLabel("Photo").SetInputFilesAsync(new FilePayload { Name = "joint.png", MimeType = "image/png", Buffer = await phone.Page.ScreenshotAsync() });
        await Assertions.Expect(dry.GetByText("Photo kept")).ToBeVisibleAsync(Patient);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "All the rest is in order" }).TapAsync();
        await phone.PictureAsync("floor-look-page-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("1 of 9 points found");

        await phone.Page.ShowAsync($"#/chain/{id}/do?what=oiling");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Oil", new() { Exact = true }).FillAsync("ISO VG 150");
        await phone.PictureAsync("floor-do-phone", whole: false);
        await phone.Page.EvaluateAsync("scrollTo(0, 0)"); // a link half behind the head that stays is half a target
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: oiled" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("next oiling");

        await phone.Page.ShowAsync($"#/chain/{id}/do?what=replacement");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5001");
        await phone.Page.GetByLabel("Lot of the new chain").FillAsync("L-77");
        await phone.Page.GetByLabel("Its length when new").FillAsync("1219.6");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("begins at 0 h");
        await phone.Page.Context.SetOfflineAsync(false);
        await phone.Page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send())");
        await phone.Page.WaitForFunctionAsync("() => import('/floor/store.js').then(s => s.entries()).then(all => all.length === 5 && all.every(e => e.state === 'sent'))", null, new() { Timeout = 60_000 });

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var look = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/looks", Ct))[0];
        var finding = look.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("found").GetBoolean());
        Assert.Equal("at the infeed", finding.GetProperty("note").GetString());
        Assert.Equal(1, finding.GetProperty("photos").GetArrayLength());
        var events = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/events", Ct)).EnumerateArray().ToList();
        Assert.Contains(events, e => e.GetProperty("event").GetString() == "oiling" && e.GetProperty("oil_grade").GetString() == "ISO VG 150");
        Assert.Contains(events, e => e.GetProperty("event").GetString() == "replacement" && e.GetProperty("lot").GetString() == "L-77");
        // The new chain begins its track with its length when new.
        var forecast = await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/SEEN-1/forecast", Ct);
        Assert.Equal(1, forecast.GetProperty("readings_used").GetInt32());
        Assert.InRange(forecast.GetProperty("elongation_pct").GetDouble(), -0.1, 0.2);
        await phone.Page.GotoAsync($"{screen.Address}/chains/SEEN-1");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Link, new() { Name = "photo" })).ToBeVisibleAsync(Patient);
    }

    [Fact]
    public async Task Two_people_at_one_chain_at_once_are_both_kept_in_order()
    {
        var (id, _) = await TakeInAsync("BOTH");
        await using var ann = await screen.OnPhoneAsync();
        await using var ben = await screen.OnPhoneAsync();
        foreach (var page in new[] { ann.Page, ben.Page })
        {
            await page.GotoAsync($"{screen.Address}/floor/");
            await page.ReadyAsync();
        }

        await Task.WhenAll(ann.Page.MeasureAsync(id, "5000", "1234.5"), ben.Page.MeasureAsync(id, "5000", "1234.4"));
        foreach (var page in new[] { ann.Page, ben.Page })
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Sent" })).ToBeVisibleAsync(Patient);
        var readings = await ReadingsAsync("BOTH-1");
        Assert.Equal([1234.4, 1234.5], readings.TakeLast(2).Select(r => r.GetProperty("length_mm").GetDouble()).Order());
        var taken = readings.Select(r => r.GetProperty("taken_at").GetDateTimeOffset()).ToList();
        Assert.Equal(taken.Order(), taken);
    }

    [Fact]
    public async Task An_entry_waits_for_its_maker_and_for_a_sign_in()
    {
        var (id, _) = await TakeInAsync("MAKER");
        await using var phone = await PhoneAsync();
        var me = """{"id":"ann","name":"Ann"}""";
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(me.Length > 0
            ? new() { ContentType = "application/json", Body = me }
            : new() { Status = 401, Body = "" }));
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.EvaluateAsync("import('/floor/maker.js').then(m => m.whoIsHere())");
        me = "";
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await Assertions.Expect(phone.Page.GetByText("Sign in, then it is sent")).ToBeVisibleAsync(Patient);
        me = """{"id":"ben","name":"Ben"}""";
        await phone.Page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send())");
        Assert.Equal(5, (await ReadingsAsync("MAKER-1")).Count);
        me = """{"id":"ann","name":"Ann"}""";
        await phone.Page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send())");
        Assert.Equal(6, (await ReadingsAsync("MAKER-1")).Count);
    }

    /// <summary>A phone at a server that knows nobody.</summary>
    private async Task<Visit> PhoneAsync(bool dark = false)
    {
        var phone = await screen.OnPhoneAsync(dark);
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(
            new() { ContentType = "application/json", Body = """{"id":null,"name":""}""" }));
        return phone;
    }

    private async Task<(int Id, string Mark)> TakeInAsync(string name)
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, name);
        using var client = new HttpClient();
        var pack = await client.GetFromJsonAsync<JsonElement>(screen.Address + "/api/v1/floor/pack", Ct);
        var chain = pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == name + "-1");
        return (chain.GetProperty("id").GetInt32(), pack.GetProperty("plant").GetProperty("mark").GetString()!);
    }

    private async Task<List<JsonElement>> ReadingsAsync(string chain)
    {
        using var client = new HttpClient();
        return [.. (await client.GetFromJsonAsync<JsonElement>($"{screen.Address}/api/v1/chains/{chain}/readings", Ct)).EnumerateArray()];
    }
}
