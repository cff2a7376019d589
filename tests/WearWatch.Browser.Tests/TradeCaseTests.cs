using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests;

/// <summary>
/// Twelve of the real cases of tests/data/trade/real_cases.csv end to end: a person types the last value and reads the answer.
/// Their sources stand in the table. And the two dates of a chain, on its page, in the list and on the phone.
/// </summary>
public sealed class TradeCaseTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Case, page, the field that is typed into, what is typed, and what stands there then.</summary>
    public static TheoryData<string, string, string, string, string> Cases => new()
    {
        { "R01", "/gauge?type=80-1&pitches=24&unit=in", "length", "24 3/4", "3.1" },
        { "R03", "/gauge?pitch_mm=15.875&pitches=18&unit=mm", "length", "286.7", "0.33 %" },
        { "R04", "/gauge?pitch_mm=12.7&length=61.2&unit=in", "pitches", "120", "2.00 %" },
        { "R27", "/gauge?length=608.4&pitches=9&unit=mm", "type", "WH78", "2.01 %" },
        { "R28", "/gauge?pitch_mm=12.7&pitches=24&unit=in", "length", "12 1/16", "0.52 %" },
        { "R09", Drive + "&driven_teeth=38", "driven_teeth", "75", "2.67 %" },
        { "R12", Drive + "&driven_teeth=38", "take_up_mm", "25", "at its end at 1.64 %" },
        { "R54", "/drive?type=16B-1&teeth=19&driven_teeth=57&rpm=300&power=12+kW&pitches=120", "idlers", "2", "22,800 an hour" },
        {
            "R49", "/drive?type=16B-2&teeth=19&driven_teeth=57&rpm=100&pitches=120", "power", "10 kW",
            "A chain of the same pitch"
        },
        { "R50", "/drive?type=16B-1&teeth=19&driven_teeth=19&rpm=100&pitches=120", "power", "7.239 kW", "more than a seventh" },
        { "R51", "/drive?type=16B-1&teeth=19&driven_teeth=19&rpm=100&pitches=120", "power", "8.848 kW", "more than a sixth" },
        { "R22", "/drive?type=16B-1&teeth=19&driven_teeth=19&power=400+hp&pitches=120", "speed", "76 m/h", "more than a sixth" },
    };

    private const string Drive = "/drive?type=16B-1&teeth=19&rpm=100&power=1+kW&pitches=120";

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task A_real_case_is_typed_and_answered(string id, string page, string field, string typed, string says)
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync(page);
        await desk.ConnectedAsync();
        await desk.Page.Locator($"input[name={field}]").FillAsync(typed);
        await desk.Page.Locator($"input[name={field}]").PressAsync("Tab");
        await Assertions.Expect(desk.Page).ToHaveURLAsync(new Regex($"[?&]{field}="));
        await Assertions.Expect(desk.Page.Locator(".bench")).ToContainTextAsync(says);
        Assert.True(desk.Complaints.Count == 0, $"{id}: {string.Join(' ', desk.Complaints)}");
    }

    [Fact]
    public async Task Unverified_values_are_searched()
    {
        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/types/unverified");
        await desk.Page.GetByLabel("Find").FillAsync("M112 tensile");
        await desk.Page.GetByLabel("Find").PressAsync("Enter");
        await Assertions.Expect(desk.Page.Locator(".unverified tbody tr")).ToHaveCountAsync(1);
        await Assertions.Expect(desk.Page.Locator(".unverified tbody tr").First).ToContainTextAsync("112,000");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    // 120 pitches of 25.4 mm with 25 mm of take-up: 100 x 2 x 25/(120 x 25.4) = 1.64 %, then 3 %.
    [Fact]
    public async Task A_chain_that_is_shortened_first_shows_both_dates()
    {
        var import = screen.Host.Services.GetRequiredService<FileImport>();
        var readings = string.Join('\n', Enumerable.Range(1, 5).Select(visit => FormattableString.Invariant(
            $"TRADE-1,2026-0{visit}-01T08:00:00Z,{700 * visit},tape,red mark,40,{1016 * (1 + 0.0025 * visit):0.00},mm,20")));
        await import.ImportAsync(
        [
            File("chains.csv", "chain,line,pitch_mm,pitches,take_up_travel_mm,oil_place\nTRADE-1,Trade,25.4,120,25,food\n"),
            File("readings.csv", $"chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n{readings}\n"),
        ], null, Ct);

        await using var desk = await screen.AtDeskAsync();
        await desk.GoAsync("/chains/TRADE-1");
        await Assertions.Expect(desk.Page.Locator(".dates.shorten")).ToContainTextAsync("take-up at its end at 1.64 %");
        await Assertions.Expect(desk.Page.Locator(".proposal").First).ToContainTextAsync("the same 40 pitches as last time");
        await Assertions.Expect(desk.Page.Locator(".oil-caution")).ToContainTextAsync("H1");
        await desk.GoAsync("/chains?search=TRADE-1");
        await Assertions.Expect(desk.Page.Locator(".chain-grid .shorten")).ToContainTextAsync("shorten");
        Assert.Empty(desk.Complaints);

        await using var phone = await screen.OnPhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        var id = await phone.Page.EvaluateAsync<int>(
            "fetch('/api/v1/floor/pack').then(r => r.json()).then(p => p.chains.find(c => c.chain === 'TRADE-1').id)");
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}");
        await Assertions.Expect(phone.Page.Locator(".facts")).ToContainTextAsync("Take out 2 pitches");
        await phone.Page.GotoAsync($"{screen.Address}/floor/#/chain/{id}/measure");
        await Assertions.Expect(phone.Page.Locator(".proposal")).ToContainTextAsync("at red mark");
    }

    private static ImportFile File(string name, string text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" };
}
