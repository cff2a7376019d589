using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The phone in the language of its person, also without signal.</summary>
public sealed class LanguageTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task A_german_technicians_round_with_a_decimal_comma_goes_without_signal_from_inspection_to_what_was_sent()
    {
        var (id, _) = await plant.TakeInAsync("RUNDE");
        await using var phone = await InAsync("de");
        var page = phone.Page;
        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync(); // the phone was off: it starts without signal
        await page.Locator("html[lang=de][data-shown]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Rundgang heute" })).ToBeVisibleAsync();

        await page.ShowAsync($"#/chain/{id}/inspect");
        await page.GetByRole(AriaRole.Button, new() { Name = "Alles Übrige in Ordnung" }).TapAsync();
        await phone.PictureAsync("floor-inspect-german-phone", whole: false);
        await page.GetByRole(AriaRole.Button, new() { Name = "Speichern", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("9 Punkte");

        await page.ShowAsync($"#/chain/{id}/measure");
        await page.GetByLabel("Betriebsstundenzähler").TapAsync();
        await page.TapDigitsAsync("5000");
        await page.GetByLabel("Länge", new() { Exact = true }).TapAsync();
        await page.TapDigitsAsync("1234,5");
        await Assertions.Expect(page.Locator(".verdict .figure")).ToContainTextAsync("1,25");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("Passt");
        await phone.PictureAsync("floor-measure-german-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Speichern", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("1,25");

        await page.ShowAsync($"#/chain/{id}/do?what=oiling");
        await page.GetByLabel("Betriebsstundenzähler").FillAsync("5000,5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Eintragen: geschmiert" }).TapAsync();
        await Assertions.Expect(page.Locator(".saved")).ToContainTextAsync("Die nächste Schmierung zählt ab jetzt.");

        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.Locator(".entry.kept")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator("ol.kept")).ToContainTextAsync("Geschmiert: RUNDE-1");
        await Assertions.Expect(page.Locator("ol.kept")).ToContainTextAsync("über 48 Glieder");
        await phone.PictureAsync("floor-kept-german-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.Context.SetOfflineAsync(false);
        await page.ShowAsync("#/");
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Gespeichert 0");
        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.Locator(".entry.sent")).ToHaveCountAsync(3);
        var reading = (await plant.ReadingsAsync("RUNDE-1")).Single(r => r.GetProperty("counter_h").GetDouble() == 5000);
        // 1234.5 mm over 48 pitches of 25.4 mm: 100 (1234.5 - 1219.2)/1219.2.
        Assert.Equal(1234.5, reading.GetProperty("length_mm").GetDouble(), 6);
        // Without signal the browser itself notes each request that found none; nothing else is complained about.
        Assert.All(phone.Complaints, c => Assert.Contains("ERR_INTERNET_DISCONNECTED", c, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_kept_in_one_language_is_read_in_another_that_is_chosen_without_signal()
    {
        var (id, _) = await plant.TakeInAsync("HABLA");
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(true);
        await phone.Page.MeasureAsync(id, "5000", "1234.5");
        await phone.Page.ShowAsync("#/kept");
        await Assertions.Expect(phone.Page.Locator(".entry")).ToContainTextAsync("1.25\u00a0% over 48 pitches");
        await phone.Page.GetByLabel("Language").SelectOptionAsync("es");
        await phone.Page.Locator("html[lang=es][data-shown]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Assertions.Expect(phone.Page.Locator(".entry")).ToContainTextAsync("1,25\u00a0% sobre 48 pasos");
        await phone.PictureAsync("floor-kept-spanish-phone", whole: false);
    }

    [Fact]
    public async Task A_number_that_could_be_one_of_thousands_says_how_it_was_read()
    {
        var (id, _) = await plant.TakeInAsync("PUNKT");
        await using var phone = await InAsync("de");
        await phone.Page.ShowAsync($"#/chain/{id}/do?what=oiling");
        await phone.Page.GetByLabel("Betriebsstundenzähler").FillAsync("12.400");
        await Assertions.Expect(phone.Page.GetByText("Gelesen als 12,400")).ToBeVisibleAsync();
        await phone.Page.GetByLabel("Betriebsstundenzähler").FillAsync("12400");
        await Assertions.Expect(phone.Page.GetByText("Gelesen als")).ToHaveCountAsync(0);
    }

    private async Task<Visit> InAsync(string code)
    {
        var phone = await plant.PhoneAsync();
        await phone.Page.Context.AddCookiesAsync([new() { Name = "language", Value = code, Url = screen.Address }]);
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        return phone;
    }
}
