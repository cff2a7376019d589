using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A German technician at the desk types numbers as at home; nothing is guessed.</summary>
public sealed class GermanDeskTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_german_browser_is_spoken_to_in_german_until_its_person_chooses()
    {
        await using var desk = await screen.AtDeskAsync(locale: "de-AT");
        await desk.GoAsync("/more");
        Assert.Equal("de", await desk.Page.Locator("html").GetAttributeAsync("lang"));
        // What the circuit draws later speaks as the page did.
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Ketten", Exact = true }).First.ClickAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Ketten", Exact = true }))
            .ToBeVisibleAsync();
        await desk.GoAsync("/more");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Español" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await desk.GoAsync("/chains");
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Cadenas", Exact = true }))
            .ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    // 1234.5 mm over 48 pitches of 25.4 mm: 100 * (1234.5 / 1219.2 - 1) = 1.2549 %.
    [Fact]
    public async Task A_reading_with_decimal_commas_is_read_asked_about_where_it_must_be_and_kept_with_points()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "KOMMA");
        await using var desk = await screen.AtDeskAsync(locale: "de-AT");
        await desk.GoAsync("/enter?chain=KOMMA-1");
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Messung eingeben" })).ToBeVisibleAsync();
        var counter = desk.Page.GetByLabel("Betriebsstundenzähler");
        await counter.FillAsync("5.000");
        await Assertions.Expect(desk.Page.GetByText("'5.000' kann 5,000 oder 5000 heißen")).ToBeVisibleAsync();
        await counter.FillAsync("5000,5");
        var length = desk.Page.GetByLabel("Länge", new() { Exact = true });
        await length.FillAsync("1.234");
        await Assertions.Expect(desk.Page.GetByText("'1.234' kann 1,234 oder 1234 heißen")).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Button, new()
        {
            Name = "Speichern",
            Exact = true
        })).ToBeDisabledAsync();
        await length.FillAsync("1234,5");
        await Assertions.Expect(desk.Page.Locator(".verdict-figure")).ToContainTextAsync("1,25 %");
        await Assertions.Expect(desk.Page.Locator(".verdict")).ToContainTextAsync("Passt");
        await desk.Page.GetByText("Temperatur, Messstelle").ClickAsync();
        await desk.Page.GetByLabel("Temperatur der Kette").FillAsync("22,5");
        await desk.PictureAsync("german-enter-desk");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Equal("", await desk.OverTheEdgeAsync());
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Speichern", Exact = true }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("Der frühe Termin")).ToBeVisibleAsync();

        await desk.GoAsync("/chains/KOMMA-1");
        await Assertions.Expect(desk.Page.GetByText("1234,5 mm über 48").First).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByText("22,5 °C").First).ToBeVisibleAsync();
        await desk.PictureAsync("german-chain-desk");
        Assert.Equal("", await desk.OverTheEdgeAsync());
        Assert.Empty(desk.Complaints);

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var kept = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/KOMMA-1/readings", Ct)).EnumerateArray().Last();
        Assert.Equal(1234.5, kept.GetProperty("length_mm").GetDouble(), 9);
        Assert.Equal(5000.5, kept.GetProperty("counter_h").GetDouble(), 9);
        Assert.Equal(22.5, kept.GetProperty("temperature_c").GetDouble(), 9);
    }

    [Fact]
    public async Task A_planner_s_cost_is_asked_about_and_not_saved_while_it_can_mean_two_numbers()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "KOSTEN");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/plan/inputs?part=costs");
        var cost = desk.Page.GetByLabel("Stopped line, per hour");
        await Assertions.Expect(cost).ToBeVisibleAsync();
        await cost.FillAsync("1,234");
        await cost.BlurAsync();
        await Assertions.Expect(desk.Page.GetByText("'1,234' can mean 1.234 or 1234")).ToBeVisibleAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the costs" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("Saved.")).ToBeHiddenAsync();
        await cost.FillAsync("1234,5");
        await cost.BlurAsync();
        await Assertions.Expect(desk.Page.GetByText("'1,234' can mean 1.234 or 1234")).ToBeHiddenAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save the costs" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("Saved.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs?part=costs");
        await Assertions.Expect(desk.Page.GetByLabel("Stopped line, per hour")).ToHaveValueAsync("1234.5");
        Assert.Empty(desk.Complaints);
    }
}
