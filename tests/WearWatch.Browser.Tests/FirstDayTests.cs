using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A new plant's first day: it is led from step to step, leaves one out, and sees what is missing.</summary>
public sealed class FirstDayTests(Screen screen)
{
    [Fact]
    public async Task An_empty_plant_is_led_from_step_to_step()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        var page = desk.Page;
        await desk.GoAsync("/");
        var steps = page.Locator(".first-day li");
        await Assertions.Expect(steps).ToHaveCountAsync(7);
        await desk.PictureAsync("first-day-empty");
        Assert.Empty(await desk.BarriersAsync());
        await steps.Filter(new() { HasText = "Time zone" }).GetByRole(AriaRole.Link, new() { Name = "To the settings" })
            .ClickAsync();
        await page.Locator("input[list=zones]").FillAsync("Europe/Vienna");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).First.ClickAsync();
        await Assertions.Expect(page.GetByText("Saved").First).ToBeVisibleAsync();

        await desk.GoAsync("/first-day");
        await Assertions.Expect(steps.Filter(new() { HasText = "Time zone" })).ToContainTextAsync("done");
        await page.GetByRole(AriaRole.Button, new() { Name = "Skip: Shifts" }).ClickAsync();
        await Assertions.Expect(page.Locator(".first-day li:has(strong:text-is('Shifts'))")).ToContainTextAsync("left out");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take up: Shifts" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Skip: Shifts" })).ToBeVisibleAsync();

        await PlantFiles.TakeInAsync(host.Services, "FIRST");
        await desk.GoAsync("/");
        await Assertions.Expect(page.GetByRole(AriaRole.Note))
            .ToContainTextAsync("First steps: 2 of 7 done. Next: Shifts, missing.");
        await page.GetByRole(AriaRole.Link, new() { Name = "To the first steps" }).ClickAsync();
        await Assertions.Expect(steps.Filter(new() { HasText = "First round" }))
            .ToContainTextAsync("1 of 2 chains were never measured");
        await Assertions.Expect(steps.Filter(new() { HasText = "Planned shutdowns" }))
            .ToContainTextAsync("1 of 1 lines have none");
        Assert.Empty(desk.Complaints);
    }

    /// <summary>A new plant's first day: from its own semicolon files to the first dates.</summary>
    [Fact]
    public async Task A_plant_brings_its_own_semicolon_files_and_sees_its_first_dates()
    {
        await using var host = new DashboardHost();
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        var page = desk.Page;
        await desk.GoAsync("/first-day");
        await page.GetByRole(AriaRole.Link, new() { Name = "Import or add chains" }).ClickAsync();

        // The register: its columns are named once.
        await ChooseAsync(page, "anlagen.csv", "Kette;Linie;Typ;Glieder;Eingebaut;Zaehler\n"
            + "FD-1;Sortierung;16B-1;120;01.12.2025;0\nFD-2;Sortierung;16B-1;96;01.12.2025;0\n");
        await page.GetByLabel("Holds").SelectOptionAsync("Chains");
        foreach (var (theirs, ours) in new[]
        {
            ("Kette", "chain"), ("Linie", "line"), ("Typ", "chain_type"), ("Glieder", "pitches"), ("Eingebaut", "fitted_at"),
            ("Zaehler", "fitted_counter_h"),
        })
        {
            await page.GetByLabel($"Column {theirs} is read as").SelectOptionAsync(ours);
            await Assertions.Expect(page.GetByLabel($"Column {theirs} is read as")).ToHaveValueAsync(ours);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 2 rows" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Import more" }).ClickAsync();

        // The readings, with commas and days first, in our names.
        await ChooseAsync(page, "messungen.csv", "chain;taken_at;counter_h;tool;pitches;length;unit\n"
            + "FD-1;20.01.2026;700;tape;48;1223,0;mm\nFD-1;01.05.2026;2.400;tape;48;1227,5;mm\n"
            + "FD-1;01.09.2026;4.200,5;tape;48;1232,0;mm\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 3 rows" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "To the plant" })).ToBeVisibleAsync();
        await desk.GoAsync("/chains/FD-1");
        await Assertions.Expect(page.GetByText("19 of 20 such chains last beyond").First).ToBeVisibleAsync();
        await desk.GoAsync("/first-day");
        await Assertions.Expect(page.Locator(".first-day li").Filter(new() { HasText = "First round" }))
            .ToContainTextAsync("1 of 2 chains were never measured");
        Assert.Empty(desk.Complaints);
    }

    private static async Task ChooseAsync(IPage page, string name, string text)
    {
        // After an import the field is another one, hidden until then.
        await Assertions.Expect(page.GetByText("Drop files here")).ToBeVisibleAsync();
        var files = page.GetByLabel("Choose CSV or xlsx files, or drop them here");
        await Assertions.Expect(files).ToBeEnabledAsync();
        await files.SetInputFilesAsync(
            new FilePayload { Name = name, MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
        await Assertions.Expect(page.GetByLabel("Between columns")).ToHaveValueAsync(";");
    }
}
