using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Register;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>The register of a lifting chain, field by field: scans, entry, report, appointment, and the end of a chain.</summary>
public sealed class LiftingControlTests(Screen screen)
{
    private const string Register = "/chains/REG-1/lifting";

    /// <summary>What an entry says, each by its name on the page, with a text of its own.</summary>
    private static readonly (string Name, string Text)[] entry =
    [
        ("Working load limit", "1500"), ("It holds for", "the pair"), ("Certificate number", "77-1204"),
        ("Certificate of", "1 Feb 2024"), ("Proof test of", "2 Feb 2024"), ("Proof load", "1900"),
        ("Proof test number", "P-88"), ("Trace mark", "T 4 4"), ("Lifts in a week", "350"), ("Own interval", "6"),
        ("Written scheme of examination", "WS-3, by the works engineer"),
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_entry_keeps_every_field_with_its_scans_and_is_changed_only_with_a_reason()
    {
        await using var host = await RegisterAsync();
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        await desk.GoAsync(Register);
        await ScanAsync(page, "Certificate", "certificate.pdf");
        await ScanAsync(page, "WrittenScheme", "scheme.pdf");
        var panel = page.GetByRole(AriaRole.Region, new() { Name = "Register entry" });
        await page.GetByText("Change the entry", new() { Exact = true }).ClickAsync();
        foreach (var (name, text) in entry) await Field(panel, name).FillAsync(text);
        await Choice(panel, "What it is part of").SelectOptionAsync("Hoist");
        await Choice(panel, "Whose law").SelectOptionAsync("UnitedKingdom");
        await Choice(panel, "Certificate, scan").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Choice(panel, "Written scheme, scan").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await panel.GetByLabel("It lifts persons").CheckAsync();
        await panel.GetByLabel("Heavy use by the words of the rule").CheckAsync();
        await panel.GetByLabel("Your name").FillAsync("Ina");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Save the entry" }).ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("Saved. Earlier entries stay on record.");

        await desk.GoAsync(Register);
        await page.GetByText("Change the entry", new() { Exact = true }).ClickAsync();
        foreach (var (name, text) in entry) await Assertions.Expect(Field(panel, name)).ToHaveValueAsync(text);
        await Assertions.Expect(Choice(panel, "What it is part of")).ToHaveValueAsync("Hoist");
        await Assertions.Expect(Choice(panel, "Whose law")).ToHaveValueAsync("UnitedKingdom");
        await Assertions.Expect(Choice(panel, "Certificate, scan")).Not.ToHaveValueAsync("");
        await Assertions.Expect(Choice(panel, "Written scheme, scan")).Not.ToHaveValueAsync("");
        await Assertions.Expect(panel.GetByLabel("Heavy use by the words of the rule")).ToBeCheckedAsync();

        await Field(panel, "Trace mark").FillAsync("T 5 5");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Save the entry" }).ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("Say why in a few words.");
        await Field(panel, "Why is it changed?").FillAsync("read wrongly");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Save the entry" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "On record" })).ToContainTextAsync("read wrongly");
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_report_is_entered_field_by_field_and_an_appointment_is_ended_with_a_reason()
    {
        await using var host = await RegisterAsync();
        await using var desk = await AtAsync(host);
        var page = desk.Page;
        var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime);
        await desk.GoAsync(Register);
        await ScanAsync(page, "ExaminationReport", "report.pdf");
        await page.GetByText("Enter a report", new() { Exact = true }).ClickAsync();
        var report = page.GetByRole(AriaRole.Region, new() { Name = "Examination report" });
        await Field(report, "Examined on").FillAsync(Text(today.AddDays(-1)));
        await report.GetByRole(AriaRole.Combobox, new() { Name = "Examiner" }).FillAsync("Ola Berg");
        await Choice(report, "Occasion").SelectOptionAsync("AfterRepair");
        await report.GetByLabel("Outcome: ").Last.SelectOptionAsync("NothingFound");
        await report.GetByRole(AriaRole.Button, new() { Name = "Other points: nothing found" }).ClickAsync();
        await Choice(report, "The report says").SelectOptionAsync("RemedyByDate");
        await Field(report, "To be put right by").FillAsync(Text(today.AddDays(20)));
        await Field(report, "Next one by the report").FillAsync(Text(today.AddDays(90)));
        await Field(report, "Remarks").FillAsync("the guard is bent");
        await Field(report, "Report number").FillAsync("R-9");
        await Choice(report, "Report, scan").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await report.GetByLabel("Your name").FillAsync("Ina");
        await report.GetByRole(AriaRole.Button, new() { Name = "Save the report" }).ClickAsync();
        await Assertions.Expect(report.GetByRole(AriaRole.Status)).ToHaveTextAsync("Saved.");
        var record = page.GetByRole(AriaRole.Region, new() { Name = "On record" });
        await Assertions.Expect(record).ToContainTextAsync("the guard is bent");
        await Assertions.Expect(record).ToContainTextAsync("to be put right by");
        await Assertions.Expect(record.GetByRole(AriaRole.Link, new() { Name = "report", Exact = true })).ToBeVisibleAsync();

        await desk.GoAsync("/lifting/appointments");
        var end = page.GetByRole(AriaRole.Button, new() { Name = "End it: the appointment of Ola Berg" });
        await end.ClickAsync();
        await Assertions.Expect(page.GetByText("Not saved.")).ToBeVisibleAsync();
        await page.GetByLabel("Why one is ended").FillAsync("has left the plant");
        await end.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("has left the plant");
        await Assertions.Expect(end).ToHaveCountAsync(0);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_chain_is_discarded_only_by_a_second_press_and_for_good()
    {
        await using var host = await RegisterAsync();
        await using var desk = await AtAsync(host);
        await desk.GoAsync(Register);
        var use = desk.Page.GetByRole(AriaRole.Region, new() { Name = "Use and release" });
        await use.GetByRole(AriaRole.Textbox, new() { Name = "Why" }).FillAsync("a plate is cracked");
        await use.GetByLabel("Your name").FillAsync("Ina");
        await use.GetByRole(AriaRole.Button, new() { Name = "Discard it" }).ClickAsync();
        await Assertions.Expect(use).Not.ToContainTextAsync("It was discarded.");
        await use.GetByRole(AriaRole.Button, new() { Name = "Really discard: for good" }).ClickAsync();
        await Assertions.Expect(use).ToContainTextAsync("It was discarded. Nothing brings it back");
        await desk.GoAsync(Register);
        await Assertions.Expect(use).ToContainTextAsync("It was discarded.");
        await Assertions.Expect(use.GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Region, new() { Name = "On record" }))
            .ToContainTextAsync("a plate is cracked");
        Assert.Empty(desk.Complaints);
    }

    private Task<Visit> AtAsync(DashboardHost host) =>
        screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static ILocator Field(ILocator panel, string name) =>
        panel.Locator($"label.field:has(> span:has-text('{name}')) input").First;

    private static ILocator Choice(ILocator panel, string name) =>
        panel.Locator($"label.field:has(> span:has-text('{name}')) select");

    /// <summary>Chooses a scanned paper of a kind.</summary>
    private static async Task ScanAsync(IPage page, string kind, string name)
    {
        var papers = page.GetByRole(AriaRole.Region, new() { Name = "Scanned papers" });
        await Choice(papers, "What it is").SelectOptionAsync(kind);
        await papers.GetByLabel("PDF or JPEG").SetInputFilesAsync(
            new FilePayload { Name = name, MimeType = "application/pdf", Buffer = "%PDF-1.4\n%%EOF"u8.ToArray() });
        await Assertions.Expect(papers).ToContainTextAsync($"Saved: {name}.");
    }

    /// <summary>A plant with a leaf chain, and somebody who may examine it.</summary>
    private static async Task<DashboardHost> RegisterAsync()
    {
        var host = new DashboardHost { StandsStill = true };
        host.Listen();
        await host.Services.GetRequiredService<RegisterDesk>().AddAsync(
            new ChainCard
            {
                Name = "REG-1",
                Line = "Yard",
                ChainType = "LL1222",
                Family = ChainFamily.Named("leaf"),
                PitchMm = 19.05,
                Pitches = 84,
            }, "Vera", ct: Ct);
        var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime);
        await host.Services.GetRequiredService<AppointmentDesk>().AppointAsync(
            new AppointmentRow
            {
                Person = "Ola Berg",
                Qualification = "trained by the maker",
                From = today.AddDays(-30),
                Until = today.AddDays(300),
                AppointedBy = "Head of the plant",
            });
        return host;
    }
}
