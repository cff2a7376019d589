using System.Globalization;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests;

/// <summary>Readings of the slack lead to a date on which a chain is tensioned anew; once it was, the date is gone.</summary>
public sealed class TensionTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // Three visits show a trend: two lie in a file, the third is entered. By squares 38 of 60 mm are a third of the way from 20.
    [Fact]
    public async Task The_third_reading_of_the_slack_gives_the_date_to_tension_and_tensioning_takes_it_away()
    {
        await TakeInAsync();
        await using var desk = await screen.AtDeskAsync();
        var page = desk.Page;
        var tension = page.Locator("dl.tension");
        await desk.GoAsync("/chains/SLACK-1");
        await Assertions.Expect(page.Locator(".measure-track-card")).ToContainTextAsync("2 of 3 visits");
        await Assertions.Expect(tension).ToHaveCountAsync(0);

        await page.GetByText("Enter a reading of a part").ClickAsync();
        var entry = page.Locator(".measure-entry");
        await entry.GetByRole(AriaRole.Combobox, new() { Name = "Part", Exact = true }).SelectOptionAsync("Sag");
        await entry.GetByLabel("Measured").FillAsync("38");
        await entry.GetByLabel("Hour counter").FillAsync("3400");
        await entry.GetByRole(AriaRole.Button, new() { Name = "Save the reading" }).ClickAsync();
        await Assertions.Expect(tension).ToBeVisibleAsync();
        await Assertions.Expect(tension).ToContainTextAsync("tension anew");
        var day = DateOnly.ParseExact(
            await tension.Locator("dd").InnerTextAsync(), "d MMM yyyy", CultureInfo.InvariantCulture);
        Assert.InRange(day, Today.AddDays(20), Today.AddDays(400)); // at 24 h a day some 6,000 h are left to the middle one
        await desk.PictureAsync("chain-tension-date");
        Assert.Empty(await desk.BarriersAsync());

        await desk.GoAsync("/chains/SLACK-1/done");
        await page.GetByRole(AriaRole.Button, new() { Name = "Tensioned" }).ClickAsync();
        await page.GetByLabel("Hour counter").FillAsync("3410");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record: tensioned" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Recorded: tensioned")).ToBeVisibleAsync();
        await desk.GoAsync("/chains/SLACK-1");
        await Assertions.Expect(page.Locator(".measure-track-card")).ToContainTextAsync("not measured since it was renewed");
        await Assertions.Expect(tension).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    private static DateOnly Today => DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime);

    private Task<ImportReport> TakeInAsync()
    {
        string Ago(int days) => Today.AddDays(-days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + "T12:00:00Z";
        (string Name, string Text)[] files =
        [
            ("chains.csv", "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h\n"
                + $"SLACK-1,Slack line,drive,16B-1,25.4,120,{Ago(160)},0\n"),
            ("part_readings.csv", "chain,taken_at,counter_h,part,place,value,new,limit,limit_source,unit\n"
                + $"SLACK-1,{Ago(135)},600,sag,,20,,60,manual p. 3,mm\nSLACK-1,{Ago(70)},2000,sag,,30,,,,mm\n"),
        ];
        return screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [.. files.Select(f => new ImportFile(f.Name, () => new MemoryStream(Encoding.UTF8.GetBytes(f.Text))) { By = "Ina" })],
            ct: Ct);
    }
}
