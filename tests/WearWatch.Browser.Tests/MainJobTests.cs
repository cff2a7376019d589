using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>
/// The main job as people do it: a file is taken in, the chain is looked at, a reading is entered, the forecast moves.
/// </summary>
public sealed class MainJobTests(Screen screen)
{
    [Fact]
    public async Task A_planner_imports_files_at_the_desk_and_sees_the_chain()
    {
        await using var desk = await screen.AtDeskAsync();
        var files = PlantFiles.Write("DESKJOB");
        await desk.GoAsync("/import");
        await desk.Page.GetByLabel("Choose CSV or xlsx files, or drop them here").SetInputFilesAsync(files);
        await Assertions.Expect(desk.Page.GetByText("What an import would do")).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByText("refused", new() { Exact = true })).ToBeVisibleAsync();
        await desk.PictureAsync("job-preview-desk");
        Assert.Empty(await desk.BarriersAsync());
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Take in" }).ClickAsync();
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Link, new() { Name = "To the plant" })).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByText("Past imports")).ToBeVisibleAsync();
        await desk.GoAsync("/chains?search=DESKJOB");
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "DESKJOB-1" }).First.ClickAsync();
        await Assertions.Expect(desk.Page.GetByText("longer than new").First).ToBeVisibleAsync();
        await Assertions.Expect(desk.Page.GetByText("19 of 20 such chains last beyond").First).ToBeVisibleAsync();
        await desk.PictureAsync("job-chain-desk");
        Assert.Empty(desk.Complaints);
        Assert.Empty(await desk.BarriersAsync());
    }

    [Fact]
    public async Task A_technician_enters_a_reading_on_the_phone_and_a_second_tab_sees_the_forecast_move()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "PHONEJOB");
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync("/enter");
        var other = await phone.SecondTabAsync("/chains/PHONEJOB-1");
        await Assertions.Expect(other.GetByText("1.03 % longer than new").Or(other.GetByText("after 4,200 h")).First)
            .ToBeVisibleAsync();
        await phone.Page.GetByLabel("Which chain?").FillAsync("phonejob-1");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "PHONEJOB-1" }).TapAsync();
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1234.5");
        await Assertions.Expect(phone.Page.Locator(".verdict-figure")).ToContainTextAsync("1.25 %");
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await phone.PictureAsync("job-enter-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("The early date")).ToBeVisibleAsync();
        await phone.PictureAsync("job-saved-phone", whole: false);
        await Assertions.Expect(other.GetByText("after 5,000 h").First).ToBeVisibleAsync();
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_slip_of_the_tape_is_asked_about_before_it_is_saved()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "SLIPJOB");
        await using var phone = await screen.OnPhoneAsync(dark: true);
        await phone.GoAsync("/enter?chain=SLIPJOB-1");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1253.4");
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Hardly possible");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Button, new() { Name = "It is right: save it" }))
            .ToBeVisibleAsync();
        await phone.PictureAsync("job-doubt-phone-dark", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Let me look again" }).TapAsync();
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1234.5");
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        Assert.Empty(phone.Complaints);
    }

    // 1260.1 mm over 49 pitches of 25.4 mm is 1.25 %, as is to be expected; told as 48 pitches it is 3.36 %.
    [Fact]
    public async Task A_miscount_is_recognised_and_corrected_with_one_tap()
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, "COUNTJOB");
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync("/enter?chain=COUNTJOB-1");
        await phone.Page.GetByLabel("Hour counter").FillAsync("5000");
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1260.1");
        var miscount = phone.Page.GetByRole(AriaRole.Button, new() { Name = "49 pitches instead of 48" });
        await Assertions.Expect(miscount).ToBeVisibleAsync();
        await phone.PictureAsync("job-slip-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await miscount.TapAsync();
        await Assertions.Expect(phone.Page.Locator(".verdict")).ToContainTextAsync("Fits");
        await Assertions.Expect(phone.Page.Locator(".verdict-figure")).ToContainTextAsync("1.25 %");
        await Assertions.Expect(miscount).ToBeHiddenAsync();
        Assert.Empty(phone.Complaints);
    }

    // 5,310 h was meant: a digit struck twice, and two swapped.
    [Theory]
    [InlineData("EXTRADESK", "53310")]
    [InlineData("SWAPDESK", "3510")]
    public async Task A_counter_that_cannot_be_is_asked_about_moves_nothing_and_is_put_right_with_one_tap(
        string name, string told)
    {
        await PlantFiles.TakeInAsync(screen.Host.Services, name);
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync($"/enter?chain={name}-1");
        await phone.Page.GetByLabel("Hour counter").FillAsync(told);
        await phone.Page.GetByLabel("Length", new() { Exact = true }).FillAsync("1234.5");
        var meant = phone.Page.GetByRole(AriaRole.Button, new() { Name = "5,310 h" });
        await Assertions.Expect(meant).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.GetByText("This counter does not fit").First).ToBeVisibleAsync();
        await phone.PictureAsync("job-counter-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        var other = await phone.SecondTabAsync($"/chains/{name}-1");
        await Assertions.Expect(other.GetByText("after 4,200 h").First).ToBeVisibleAsync();
        await meant.TapAsync();
        await Assertions.Expect(phone.Page.GetByLabel("Hour counter")).ToHaveValueAsync("5310");
        await Assertions.Expect(meant).ToBeHiddenAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByText("The early date")).ToBeVisibleAsync();
        await Assertions.Expect(other.GetByText("after 5,310 h").First).ToBeVisibleAsync();
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task The_look_that_a_person_takes_stays_after_the_page_is_loaded_again()
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/settings");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Dark look" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".app.dark")).ToBeVisibleAsync();
        await desk.Page.ReloadAsync();
        await Assertions.Expect(desk.Page.Locator(".app.dark")).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

}
