using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;
using WearWatch.Plant.Planning;

namespace WearWatch.Browser.Tests;

/// <summary>What was done, told at the desk: each fact by a control of its own, kept in a field of its own.</summary>
public sealed class DoneTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Chains_that_run_together_are_shortened_together_at_the_desk_and_on_the_phone()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "PAIR");
        var inputs = screen.Host.Services.GetRequiredService<PlanInputs>();
        foreach (var chain in new[] { "PAIR-1", "PAIR-2" })
            await inputs.SaveAsync(new SwapTermsLine(chain, "", "pair", null, null, WithSprockets: false), Ct);
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/chains/PAIR-1/done");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Shortened" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByLabel("as many were taken out of PAIR-2")).ToBeCheckedAsync();
        await desk.PictureAsync("done-shortened-together-desk");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Record: shortened" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("Recorded for PAIR-2 too.")).ToBeVisibleAsync();

        var floor = new FloorPlant(screen);
        await using var phone = await floor.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var pack = await client.GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        var id = pack.GetProperty("chains").EnumerateArray().Single(c => c.GetProperty("chain").GetString() == "PAIR-2")
            .GetProperty("id").GetInt32();
        await phone.Page.ShowAsync($"#/chain/{id}/do?what=shortened");
        await Assertions.Expect(phone.Page.GetByLabel("as many were taken out of PAIR-1")).ToBeCheckedAsync();
        await phone.PictureAsync("floor-shortened-together-phone", whole: false);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Record: shortened" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToBeVisibleAsync();
        var shortened = new List<string?>();
        for (var wait = 0; wait < 200 && shortened.Count < 4; wait++)
        {
            await Task.Delay(300, Ct);
            shortened.Clear();
            foreach (var chain in new[] { "PAIR-1", "PAIR-2" })
            {
                var events = await client.GetFromJsonAsync<JsonElement>($"/api/v1/chains/{chain}/events", Ct);
                shortened.AddRange(events.EnumerateArray().Where(e => e.GetProperty("event").GetString() == "shortened")
                    .Select(_ => chain));
            }
        }

        Assert.Equal(["PAIR-1", "PAIR-1", "PAIR-2", "PAIR-2"], shortened);
    }

    [Fact]
    public async Task A_shortening_and_a_replacement_are_told_with_their_facts_and_shown_with_them()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "DONEDESK");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/chains/DONEDESK-1/done");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Shortened" }).ClickAsync();
        await desk.Page.GetByLabel("Pitches taken out").FillAsync("");
        await Assertions.Expect(desk.Page.GetByText("A whole number of pitches, at least 1.")).ToBeVisibleAsync();
        await desk.Page.GetByLabel("Pitches taken out").FillAsync("4");
        await desk.Page.GetByLabel("Take-up position").FillAsync("12.5");
        await desk.PictureAsync("done-shortened-desk");
        Assert.Empty(await desk.BarriersAsync());
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Record: shortened" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("116 of 120 pitches are left.")).ToBeVisibleAsync();

        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Something else was done" }).ClickAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Chain replaced" }).ClickAsync();
        await desk.Page.GetByLabel("Supplier's lot").FillAsync("L-78");
        await desk.Page.GetByLabel("Pitches of the new chain").FillAsync("118");
        await desk.Page.GetByLabel("the old chain broke while it ran").CheckAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Record: chain replaced" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("starts at 0 h")).ToBeVisibleAsync();

        await desk.GoAsync("/chains/DONEDESK-1");
        await Assertions.Expect(desk.Page.GetByText("shortened, 4 pitches out, take-up at 12.5 mm")).ToBeVisibleAsync();
        await Assertions
            .Expect(desk.Page.GetByText("new chain fitted, 118 pitches when new, the old chain broke, lot L-78"))
            .ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);

        using var client = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var events = (await client.GetFromJsonAsync<JsonElement>("/api/v1/chains/DONEDESK-1/events", Ct)).EnumerateArray()
            .TakeLast(2);
        Assert.Equal(
            [("shortened", "4", "12.5", false, "", ""), ("replacement", "", "", true, "L-78", "")],
            events.Select(e => (
                e.GetProperty("event").GetString()!, e.GetProperty("pitches_out").ToString(),
                e.GetProperty("take_up_mm").ToString(),
                e.GetProperty("broke").GetBoolean(), e.GetProperty("lot").GetString()!, e.GetProperty("note").GetString()!)));
    }

    [Fact]
    public async Task A_reading_in_inches_with_the_take_up_is_shown_as_it_was_told_and_the_next_one_begins_in_inches()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "INCHDESK");
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/enter?chain=INCHDESK-1");
        await desk.Page.GetByLabel("Hour counter").FillAsync("5000");
        await desk.Page.GetByRole(AriaRole.Radio, new() { Name = "in", Exact = true }).CheckAsync(new() { Force = true });
        await desk.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("48 19/32"); // 1234.28 mm
        await desk.Page.GetByText("Temperature, place, take-up").ClickAsync();
        await desk.Page.GetByLabel("Take-up position").FillAsync("35.5");
        await Assertions.Expect(desk.Page.Locator(".verdict-figure")).ToContainTextAsync("1.24 %");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("The early date")).ToBeVisibleAsync();
        await desk.GoAsync("/chains/INCHDESK-1");
        await Assertions.Expect(desk.Page.GetByText("48 19/32 in (1,234.28 mm) over 48, tape, take-up at 35.5 mm"))
            .ToBeVisibleAsync();
        await desk.GoAsync("/enter?chain=INCHDESK-1");
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Radio, new() { Name = "in", Exact = true })).ToBeCheckedAsync();
        Assert.Empty(desk.Complaints);
    }
}
