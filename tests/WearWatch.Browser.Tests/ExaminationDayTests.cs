using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Browser.Tests.Floor;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Browser.Tests;

/// <summary>
/// An examination day at a fork-lift's mast: an appointment, the due list, the sheet, a report, a finding on the phone that takes
/// the chain out of use, a release by the appointed person.
/// </summary>
public sealed class ExaminationDayTests(Screen screen)
{
    private const string Chain = "MAST-1";
    private const string Register = "/chains/" + Chain + "/lifting";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_examination_day_from_the_due_list_to_the_release_at_desk_and_phone()
    {
        var id = await TakeInAsync();
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/lifting");
        await Assertions.Expect(desk.Page.Locator("main")).ToContainTextAsync("never examined");
        await CheckAsync(desk, "lifting-due-desk-light");
        await desk.GoAsync("/chains?search=" + Chain);
        await Assertions.Expect(desk.Page.Locator(".chain-grid .lifting-mark")).ToContainTextAsync("never examined");

        await AppointAsync(desk);
        await desk.GoAsync(Register);
        await EnterAsync(desk);
        await desk.Page.GotoAsync($"{screen.Address}{Register}/sheet");
        await Assertions.Expect(desk.Page.Locator("body")).ToContainTextAsync("Signature");
        await Assertions.Expect(desk.Page.Locator("body")).ToContainTextAsync("Stops the chain.");
        await desk.PictureAsync("lifting-sheet-desk-light");

        await desk.GoAsync(Register);
        await ExamineAsync(desk);
        await CheckAsync(desk, "lifting-register-desk-light");

        await FindOnThePhoneAsync(id);
        await Assertions.Expect(desk.Page.Locator(".lifting-verdict")).ToHaveTextAsync("Out of use");
        foreach (var dark in new[] { true, false })
        {
            await using var phone = await screen.OnPhoneAsync(dark);
            await phone.GoAsync("/chains/" + Chain);
            await Assertions.Expect(phone.Page.Locator(".lifting-verdict")).ToHaveTextAsync("Out of use");
            await CheckAsync(phone, $"lifting-out-of-use-phone-{(dark ? "dark" : "light")}");
        }

        await ReleaseAsync(desk);
        await using var night = await screen.AtDeskAsync(dark: true);
        await night.GoAsync(Register);
        await Assertions.Expect(night.Page.Locator(".lifting-verdict")).ToContainTextAsync("Attend to it");
        await CheckAsync(night, "lifting-register-desk-dark");
        await night.GoAsync("/lifting");
        await CheckAsync(night, "lifting-due-desk-dark");
        await using var small = await screen.OnPhoneAsync();
        await small.GoAsync(Register);
        await small.Page.Locator(".lifting-banner").WaitForAsync();
        await CheckAsync(small, "lifting-register-phone-light");
    }

    /// <summary>The one who appoints is another person than the one who is appointed.</summary>
    private static async Task AppointAsync(Visit desk)
    {
        await desk.GoAsync("/lifting/appointments");
        var form = desk.Page.Locator("form.card-fields");
        await form.GetByLabel("Name", new() { Exact = false }).First.FillAsync("Ola Berg");
        await form.GetByLabel("Training and experience").FillAsync("trained by the maker, ten years at trucks");
        await form.GetByLabel("Your name").FillAsync("Head of the plant");
        await form.GetByRole(AriaRole.Button, new() { Name = "Appoint" }).ClickAsync();
        await Assertions.Expect(form).ToContainTextAsync("Saved.");
        await Assertions.Expect(desk.Page.Locator("main")).ToContainTextAsync("appointed by Head of the plant");
        await CheckAsync(desk, "lifting-appointments-desk-light");
    }

    private static async Task EnterAsync(Visit desk)
    {
        await desk.Page.GetByText("Change the entry", new() { Exact = true }).ClickAsync();
        var entry = desk.Page.GetByRole(AriaRole.Region, new() { Name = "Register entry" });
        await entry.GetByLabel("Working load limit").FillAsync("1500");
        await entry.GetByLabel("It holds for").FillAsync("the pair");
        await entry.GetByLabel("Certificate number").FillAsync("77-1204");
        await entry.GetByRole(AriaRole.Button, new() { Name = "Save the entry" }).ClickAsync();
        await Assertions.Expect(entry).ToContainTextAsync("Saved.");
        await Assertions.Expect(desk.Page.Locator(".lifting-banner")).Not.ToContainTextAsync("No certificate");
    }

    private static async Task ExamineAsync(Visit desk)
    {
        await desk.Page.GetByText("Enter a report", new() { Exact = true }).ClickAsync();
        var report = desk.Page.GetByRole(AriaRole.Region, new() { Name = "Examination report" });
        await report.GetByRole(AriaRole.Combobox, new() { Name = "Examiner" }).FillAsync("Ola Berg");
        await report.GetByLabel("The report says").SelectOptionAsync("NothingFound");
        await report.GetByRole(AriaRole.Button, new() { Name = "Save the report" }).ClickAsync();
        await Assertions.Expect(report).ToContainTextAsync("points were not examined");
        await report.GetByRole(AriaRole.Button, new() { Name = "Other points: nothing found" }).ClickAsync();
        await report.GetByRole(AriaRole.Button, new() { Name = "Save the report" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".lifting-verdict")).ToContainTextAsync("Attend to it");
        await Assertions.Expect(desk.Page.Locator(".lifting-dates")).ToContainTextAsync("next by");
    }

    private async Task FindOnThePhoneAsync(int id)
    {
        await using var phone = await new FloorPlant(screen).PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.ShowAsync($"#/chain/{id}");
        await Assertions.Expect(phone.Page.Locator(".lifting-banner")).ToContainTextAsync("at the latest");
        await phone.PictureAsync("lifting-floor-chain-phone", whole: false);
        await phone.Page.ShowAsync($"#/chain/{id}/inspect");
        var point = phone.Page.Locator(".point").First;
        await point.GetByRole(AriaRole.Radio, new() { Name = "found", Exact = true }).TapAsync();
        await phone.Page.RunAndWaitForResponseAsync(
            () => phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync(),
            response => response.Url.EndsWith("/api/v1/inspections", StringComparison.Ordinal) && response.Status == 201);
        await Assertions.Expect(phone.Page.Locator(".saved")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("1 of 1 points found");
    }

    private static async Task ReleaseAsync(Visit desk)
    {
        await desk.GoAsync(Register);
        var use = desk.Page.GetByRole(AriaRole.Region, new() { Name = "Use and release" });
        await use.GetByRole(AriaRole.Textbox, new() { Name = "Why" }).FillAsync("dirt, no crack: cleaned and tested by dye");
        await use.GetByLabel("Your name").FillAsync("Ina");
        await use.GetByLabel("found on").First.CheckAsync();
        await use.GetByRole(AriaRole.Button, new() { Name = "Release as competent person" }).ClickAsync();
        await Assertions.Expect(use).ToContainTextAsync("has no appointment");
        await CheckAsync(desk, "lifting-release-refused-desk-light");
        await use.GetByLabel("Your name").FillAsync("Ola Berg");
        await use.GetByRole(AriaRole.Button, new() { Name = "Release as competent person" }).ClickAsync();
        await Assertions.Expect(use).ToContainTextAsync("Recorded: released.");
        await Assertions.Expect(desk.Page.Locator(".lifting-verdict")).ToContainTextAsync("Attend to it");
    }

    private static async Task CheckAsync(Visit visit, string picture)
    {
        await visit.PictureAsync(picture);
        Assert.Equal("", await visit.OverTheEdgeAsync());
        Assert.Empty(visit.Complaints);
        Assert.Empty(await visit.BarriersAsync());
    }

    private async Task<int> TakeInAsync()
    {
        var services = screen.Host.Services;
        await services.GetRequiredService<PlantSettings>().ChangeAsync(p => p.LawRegion = LawRegion.Germany, Ct);
        await services.GetRequiredService<RegisterDesk>().AddAsync(
            new ChainCard
            {
                Name = Chain,
                Line = "Yard",
                Position = "Fork lift 3",
                ChainType = "LL1222",
                Family = ChainFamily.Named("leaf"),
                PitchMm = 19.05,
                Pitches = 84,
            }, "Vera", ct: Ct);
        for (var (day, percent) = (-40, 0.2); day < 0; day += 10, percent += 0.02)
            Assert.IsType<IntakeAnswer.Taken>(await services.GetRequiredService<IntakeDesk>().TakeReadingAsync(new NewReading
            {
                Key = $"mast {day}",
                Chain = Chain,
                TakenAt = services.GetRequiredService<TimeProvider>().GetUtcNow().AddDays(day),
                CounterH = 2000 + 5 * day,
                Tool = Tool.Caliper,
                Pitches = 16,
                Length = FormattableString.Invariant($"{16 * 19.05 * (1 + percent / 100):0.00}"),
                ToldBy = "Ina",
            }, Ct));
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        return await db.Chains.Where(c => c.Name == Chain).Select(c => c.Id).SingleAsync(Ct);
    }
}
