using System.Diagnostics;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The technician's floor on a phone: from the label to the saved reading, and what is refused on the way.</summary>
public sealed class FloorTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // Taps: Measure, the counter, Next, Save. Digits are not counted.
    [Fact]
    public async Task A_scanned_label_leads_to_a_saved_reading_in_four_taps_and_the_digits()
    {
        var (id, mark) = await plant.TakeInAsync("SCAN");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{mark}/{id}");
        await phone.Page.ReadyAsync();
        await phone.PictureAsync("floor-chain-phone", whole: false);
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).TapAsync();
        await phone.PictureAsync("floor-measure-begun-phone", whole: false);
        await phone.Page.GetByLabel("Hour counter").TapAsync();
        await phone.Page.TapDigitsAsync("5000");
        while (!await phone.Page.GetByLabel("Length", new() { Exact = true })
            .EvaluateAsync<bool>("e => e === document.activeElement"))
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Next field" }).TapAsync();
        await phone.Page.TapDigitsAsync("1234.5");
        await Assertions.Expect(phone.Page.Locator(".verdict .figure")).ToContainTextAsync("1.25");
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await phone.PictureAsync("floor-measure-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("The early date")).ToBeVisibleAsync();
        await phone.PictureAsync("floor-sent-phone", whole: false);
        Assert.Equal(6, (await plant.ReadingsAsync("SCAN-1")).Count);
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task Another_plants_label_is_refused_and_opens_nothing()
    {
        var (id, mark) = await plant.TakeInAsync("LABEL");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{(mark == "AAAA2222" ? "BBBB2222" : "AAAA2222")}/{id}");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "This label is of another plant" }))
            .ToBeVisibleAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/at/{mark}/999999");
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "not in the register" }))
            .ToBeVisibleAsync();
        Assert.Empty(await phone.BarriersAsync());
    }

    // 1260.1 mm over 49 pitches of 25.4 mm is 1.25 %, as is to be expected; told as 48 pitches it is 3.36 %.
    [Fact]
    public async Task A_miscount_is_recognised_with_signal_and_corrected_with_one_tap()
    {
        var (id, _) = await plant.TakeInAsync("MISCOUNT");
        await using var phone = await plant.PhoneAsync(dark: true);
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}/measure");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1260.1");
        var miscount = phone.Page.GetByRole(AriaRole.Button, new() { Name = "49 pitches instead of 48" });
        await Assertions.Expect(miscount).ToBeVisibleAsync();
        await phone.PictureAsync("floor-slip-phone-dark", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await miscount.TapAsync();
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await Assertions.Expect(phone.Page.Locator(".verdict .figure")).ToContainTextAsync("1.25");
        Assert.Empty(phone.Complaints);
    }

    // 5,310 h was meant: a digit struck twice, and two swapped.
    [Theory]
    [InlineData("EXTRAFLOOR", "53310")]
    [InlineData("SWAPFLOOR", "3510")]
    public async Task A_counter_that_cannot_be_is_asked_about_and_corrected_with_one_tap(string name, string told)
    {
        var (id, _) = await plant.TakeInAsync(name);
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}/measure");
        await phone.Page.GetByLabel("Hour counter").FillAsync(told);
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1234.5");
        var meant = phone.Page.GetByRole(AriaRole.Button, new() { Name = "5,310 h" });
        await Assertions.Expect(meant).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("This counter does not fit").First).ToBeVisibleAsync();
        await phone.PictureAsync("floor-counter-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        Assert.Equal(5, (await plant.ReadingsAsync(name + "-1")).Count);
        await meant.TapAsync();
        await Assertions.Expect(phone.Page.GetByLabel("Hour counter")).ToHaveValueAsync("5310");
        await Assertions.Expect(meant).ToBeHiddenAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("The early date")).ToBeVisibleAsync();
        Assert.Equal(5310, (await plant.ReadingsAsync(name + "-1"))[^1].GetProperty("counter_h").GetDouble());
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_doubted_reading_without_signal_is_kept_comes_back_and_is_put_right_with_one_tap()
    {
        var (id, _) = await plant.TakeInAsync("COMEBACK");
        await using var phone = await plant.PhoneAsync();
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
        await phone.Page.WaitForFunctionAsync(
            "() => /check 1/.test(document.getElementById('kept').textContent)");
        await phone.Page.ShowAsync("#/kept");
        await Assertions.Expect(phone.Page.GetByText("does not fit")).ToBeVisibleAsync();
        var miscount = phone.Page.GetByRole(AriaRole.Button, new() { Name = "49 pitches instead of 48" });
        await Assertions.Expect(miscount).ToBeVisibleAsync();
        await phone.PictureAsync("floor-look-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await miscount.TapAsync();
        await Assertions.Expect(phone.Page.Locator(".entry[data-state=sent]")).ToHaveCountAsync(2);
        Assert.Equal(49, (await plant.ReadingsAsync("COMEBACK-1"))[^1].GetProperty("pitches").GetInt32());
    }

    // zbarimg knows nothing of the program that drew the code.
    [Fact]
    public async Task A_printed_label_is_read_by_another_program_and_leads_to_its_position()
    {
        var (id, mark) = await plant.TakeInAsync("CODE");
        await using var desk = await screen.AtDeskAsync();
        await desk.Page.GotoAsync($"{screen.Address}/labels?chain=CODE-1");
        await desk.PictureAsync("labels-desk");
        var picture = Path.Combine(Directory.CreateTempSubdirectory("wearwatch-label-").FullName, "label.png");
        await desk.Page.Locator(".label svg").ScreenshotAsync(new() { Path = picture });
        using var reader =
            Process.Start(new ProcessStartInfo("zbarimg", ["-q", "--raw", picture]) { RedirectStandardOutput = true })!;
        Assert.Equal($"{screen.Address}/floor/at/{mark}/{id}", (await reader.StandardOutput.ReadToEndAsync(Ct)).Trim());
        Assert.Empty(await desk.BarriersAsync());
    }

    [Fact]
    public async Task Two_people_at_one_chain_at_once_are_both_kept_in_order()
    {
        var (id, _) = await plant.TakeInAsync("BOTH");
        await using var ann = await screen.OnPhoneAsync();
        await using var ben = await screen.OnPhoneAsync();
        foreach (var page in new[] { ann.Page, ben.Page })
        {
            await page.GotoAsync($"{screen.Address}/floor/");
            await page.ReadyAsync();
        }

        await Task.WhenAll(ann.Page.MeasureAsync(id, "5000", "1234.5"), ben.Page.MeasureAsync(id, "5000", "1234.4"));
        foreach (var page in new[] { ann.Page, ben.Page })
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Sent" })).ToBeVisibleAsync();
        var readings = await plant.ReadingsAsync("BOTH-1");
        Assert.Equal([1234.4, 1234.5], readings.TakeLast(2).Select(r => r.GetProperty("length_mm").GetDouble()).Order());
        var taken = readings.Select(r => r.GetProperty("taken_at").GetDateTimeOffset()).ToList();
        Assert.Equal(taken.Order(), taken);
    }

    [Fact]
    public async Task An_entry_waits_for_its_maker_and_for_a_sign_in()
    {
        var (id, _) = await plant.TakeInAsync("MAKER");
        await using var phone = await plant.PhoneAsync();
        var me = """{"id":"ann","name":"Ann"}""";
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(me.Length > 0
            ? new() { ContentType = "application/json", Body = me }
            : new() { Status = 401, Body = "" }));
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.EvaluateAsync("import('/floor/maker.js').then(m => m.whoIsHere())");
        me = "";
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await Assertions.Expect(phone.Page.GetByText("Sign in, then it is sent")).ToBeVisibleAsync();
        me = """{"id":"ben","name":"Ben"}""";
        await phone.Page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send({ atOnce: true }))");
        Assert.Equal(5, (await plant.ReadingsAsync("MAKER-1")).Count);
        me = """{"id":"ann","name":"Ann"}""";
        await phone.Page.EvaluateAsync("import('/floor/outbox.js').then(m => m.send({ atOnce: true }))");
        Assert.Equal(6, (await plant.ReadingsAsync("MAKER-1")).Count);
    }
}
