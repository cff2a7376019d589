using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

public sealed partial class WorkbenchTests(Screen screen, Walk walk) : IClassFixture<Walk>
{
    /// <summary>Address, name of the pictures, and what stands on the page once it is whole.</summary>
    public static TheoryData<string, string, string> Pages => new()
    {
        { "/tools", "tools", ".tools" },
        { "/more", "more", ".tools" },
        { "/gauge?from_hook=yes&length=617.5;617.8&pitches=24&teeth=19,75&type=16B-1&unit=mm", "gauge", ".budget" },
        {
            "/drive?ambient_c=25&centre=1000+mm&driven_teeth=57&lubrication=manual&power=18+kW&rpm=300&teeth=19&type=16A-1",
            "drive",
            ".hours-scale"
        },
        {
            "/drive?centre=24000+mm&driven_teeth=8&power=400+hp&speed=76+m/h&teeth=8&type=M112x160",
            "drive-impossible",
            ".remark.bad"
        },
        { "/types?find=16&compare=16B-1,16A-1,80-1", "types", ".compare" },
        { "/measuring", "measuring", ".study" },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_calculator_stands_at_desk_and_on_the_phone_in_light_and_dark(string path, string name, string whole)
    {
        foreach (var dark in new[] { false, true })
        {
            await using var desk = await walk.LookAsync(onPhone: false, dark);
            await CheckAsync(desk, path, whole, $"{name}-desk-{(dark ? "dark" : "light")}");
            await using var phone = await walk.LookAsync(onPhone: true, dark);
            await CheckAsync(phone, path, whole, $"{name}-phone-{(dark ? "dark" : "light")}");
        }
    }

    // 617.5 mm over 24 pitches of 25.4 mm: 100 (617.5 - 609.6)/609.6 = 1.30 % (docs/references.md [4]).
    [Fact]
    public async Task A_technician_fills_the_gauge_on_a_phone_and_sends_its_address()
    {
        await using var phone = await screen.OnPhoneAsync();
        await phone.GoAsync("/tools");
        await phone.Page.GetByRole(AriaRole.Link, new() { NameRegex = GaugeLink() }).First.TapAsync();
        // The heading takes the focus once the page has changed.
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "Gauge" })).ToBeFocusedAsync();
        await FillAsync(phone.Page, "type", "16B-1");
        await FillAsync(phone.Page, "pitches", "24");
        await FillAsync(phone.Page, "length", "617.5");
        await Assertions.Expect(phone.Page.Locator(".result-figure")).ToContainTextAsync("1.30 %");
        await Assertions.Expect(phone.Page.Locator(".condition").First).ToContainTextAsync("within limit");
        await FillAsync(phone.Page, "pitches", "25");
        await Assertions.Expect(phone.Page.Locator(".gauge-result")).ToContainTextAsync("no chain runs so");

        await using var colleague = await screen.AtDeskAsync();
        await colleague.GoAsync(
            new Uri(phone.Page.Url).PathAndQuery.Replace("pitches=25", "pitches=24", StringComparison.Ordinal));
        await Assertions.Expect(colleague.Page.Locator(".result-figure")).ToContainTextAsync("1.30 %");
        Assert.Empty(phone.Complaints);
    }

    [Fact]
    public async Task A_person_who_chose_inches_reads_and_writes_inches_from_then_on()
    {
        await using var visit = await screen.AtDeskAsync();
        await visit.GoAsync("/gauge?length=617.5&pitches=24&type=16B-1&unit=mm");
        await visit.Page.Locator(".units summary").ClickAsync();
        await visit.Page.Locator(".units select[name=length]").SelectOptionAsync("in");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Use these" }).ClickAsync();
        await visit.ConnectedAsync();
        await Assertions.Expect(visit.Page.Locator(".gauge-result")).ToContainTextAsync("24.311 in over 24 pitches of 1 in");
        await visit.GoAsync("/gauge");
        await FillAsync(visit.Page, "type", "80-1");
        await FillAsync(visit.Page, "pitches", "24");
        await FillAsync(visit.Page, "length", "24 5/16");
        await Assertions.Expect(visit.Page.Locator(".result-figure")).ToContainTextAsync("1.30 %");
        Assert.Contains("unit=in", visit.Page.Url, StringComparison.Ordinal);
        Assert.Empty(visit.Complaints);
    }

    [Fact]
    public async Task A_study_is_pasted_and_judged()
    {
        await using var visit = await screen.AtDeskAsync();
        await visit.GoAsync("/measuring");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show an invented example" }).First.ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("Classes of wear it can tell apart")).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show an invented example" }).Nth(1).ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("grows or shrinks with the length")).ToBeVisibleAsync();
        await visit.Page.EvaluateAsync("scrollTo(0, 0)");
        await visit.PictureAsync("measuring-study-desk-light");
        Assert.Empty(await visit.BarriersAsync());
        Assert.Empty(visit.Complaints);
    }

    private static async Task CheckAsync(Visit visit, string path, string whole, string picture)
    {
        await visit.GoAsync(path);
        await visit.Page.Locator(whole).First.WaitForAsync();
        await visit.PictureAsync(picture);
        Assert.Empty(visit.Complaints);
        Assert.Empty(await visit.BarriersAsync());
        // Nothing may stick out to the side of a phone.
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= window.innerWidth"),
            picture + " is wider than the screen");
    }

    private static async Task FillAsync(IPage page, string name, string text)
    {
        var field = page.Locator($"input[name={name}]");
        await field.FillAsync(text);
        await field.PressAsync("Tab");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex($"[?&]{name}="));
    }

    [GeneratedRegex("^Gauge")]
    private static partial Regex GaugeLink();
}
