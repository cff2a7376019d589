using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A planner brings the plant's own spreadsheet: how it is read is shown and put right, its columns are named once, and what was
/// refused is corrected and brought again.
/// </summary>
public sealed class SpreadsheetTests(Screen screen)
{
    private const string Header = "Kette;Datum;Stunden;Mittel;Glieder;Laenge;Einheit;Bemerkung";

    [Fact]
    public async Task A_German_spreadsheet_with_its_own_names_is_mapped_taken_in_corrected_and_known_the_next_time()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "SHEETJOB");
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/import");
        await ChooseAsync(page, "mai.csv", $"{Header}\nSHEETJOB-2;03.10.2026;4.500,5;tape;48;1224,4;mm;gut\n"
            + "SHEETJOB-2;04.10.2026;4.520,5;tape;0;1224,6;mm;\n");
        await Assertions.Expect(page.GetByLabel("Between columns")).ToHaveValueAsync(";");
        await Assertions.Expect(page.GetByLabel("Decimal sign")).ToHaveValueAsync(",");
        await Assertions.Expect(page.GetByLabel("Order of dates")).ToHaveValueAsync("DayFirst");
        await page.GetByLabel("Holds").SelectOptionAsync("Readings");
        await Assertions.Expect(page.GetByText("Still needed: chain, tool, pitches, length, unit, taken_at.")).ToBeVisibleAsync();
        foreach (var (theirs, ours) in new[]
        {
            ("Kette", "chain"), ("Datum", "taken_at"), ("Stunden", "counter_h"), ("Mittel", "tool"), ("Glieder", "pitches"),
            ("Laenge", "length"), ("Einheit", "unit"),
        })
        {
            await page.GetByLabel($"Column {theirs} is read as").SelectOptionAsync(ours);
            await Assertions.Expect(page.GetByLabel($"Column {theirs} is read as")).ToHaveValueAsync(ours);
        }

        await Assertions.Expect(page.GetByText("Still needed")).ToHaveCountAsync(0);
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" })).ToBeEnabledAsync();
        await desk.PictureAsync("spreadsheet-mapped");
        Assert.Empty(await desk.BarriersAsync());
        var download = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Link, new() { Name = "Refused rows of mai.csv" }).ClickAsync());
        var refused = await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        Assert.Contains("SHEETJOB-2;04.10.2026;4.520,5;tape;0;1224,6;mm;;", refused, StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Refused rows of mai.csv" }).Nth(1))
            .ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Import more" }).ClickAsync();
        await ChooseAsync(page, "mai-refused.csv", refused.Replace("tape;0;", "tape;48;", StringComparison.Ordinal));
        await Assertions.Expect(page.GetByLabel("Column Laenge is read as")).ToHaveValueAsync("length");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "To the plant" })).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_is_not_clear_is_said_by_hand_and_the_check_follows()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "CLEARJOB");
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        await desk.GoAsync("/import");
        await ChooseAsync(page, "readings.csv",
            "chain;taken_at;counter_h;tool;pitches;length;unit\nCLEARJOB-2;03/10/2026;4,500;tape;48;1224;mm\n");
        await Assertions.Expect(page.GetByLabel("Decimal sign")).ToHaveValueAsync("");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take in 0 rows" })).ToBeDisabledAsync();
        await page.GetByLabel("Decimal sign").SelectOptionAsync(".");
        await page.GetByLabel("Order of dates").SelectOptionAsync("DayFirst");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" })).ToBeEnabledAsync();
        await page.GetByLabel("Between columns").SelectOptionAsync(",");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take in 0 rows" })).ToBeDisabledAsync();
        await page.GetByLabel("Between columns").SelectOptionAsync(";");
        await page.GetByLabel("Encoding").SelectOptionAsync("1252");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take in 1 row" })).ToBeEnabledAsync();
        Assert.Empty(desk.Complaints);
    }

    private static async Task ChooseAsync(IPage page, string name, string text)
    {
        // After an import the field is another one, hidden until then.
        await Assertions.Expect(page.GetByText("Drop files here")).ToBeVisibleAsync();
        await page.GetByLabel("Choose CSV or xlsx files, or drop them here").SetInputFilesAsync(
            new FilePayload { Name = name, MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
    }
}
