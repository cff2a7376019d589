using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Browser.Tests;

/// <summary>
/// The oil round on the phone: a line of twelve chains takes at most three taps, and a mistaken tap is taken back.
/// </summary>
public sealed class OilTests(Screen screen, Walk walk) : IClassFixture<Walk>
{
    private const int MostTaps = 3;

    [Fact]
    public async Task A_line_of_twelve_chains_is_oiled_with_at_most_three_taps_and_a_mistake_is_taken_back()
    {
        await TakeInAsync();
        await using var phone = await screen.OnPhoneAsync();
        var taps = 0;
        Task Tap(ILocator at)
        {
            taps++;
            return at.TapAsync();
        }

        await phone.GoAsync("/");
        await Tap(phone.Page.GetByRole(AriaRole.Link, new() { Name = "Lubrication", Exact = true }));
        var line = phone.Page.GetByRole(AriaRole.Region, new() { Name = "OILLINE" });
        await Assertions.Expect(line).ToBeVisibleAsync();
        await phone.ConnectedAsync();
        await phone.PictureAsync("oil-round-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await Tap(line.GetByRole(AriaRole.Button, new() { Name = "All 12 done" }));
        await Assertions.Expect(phone.Page.GetByText("12 chains recorded.")).ToBeVisibleAsync();
        Assert.InRange(taps, 1, MostTaps);
        Assert.Equal(12, await OilingsAsync(withdrawn: false));
        await phone.PictureAsync("oil-done-phone", whole: false);

        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToHaveCountAsync(0);
        await Assertions.Expect(line.GetByRole(AriaRole.Button, new() { Name = "All 12 done" })).ToBeVisibleAsync();
        Assert.Equal(12, await OilingsAsync(withdrawn: true));
        Assert.Equal(12, await OilingsAsync(withdrawn: false));
        Assert.Empty(phone.Complaints);
    }

    [Theory]
    [InlineData("/lubrication", "oil-round-desk")]
    [InlineData("/lubrication/interval", "oil-interval-desk")]
    [InlineData("/lubrication/used", "oil-used-desk")]
    [InlineData("/lubrication/chains/OIL-03", "oil-advice-desk")]
    public async Task The_pages_of_oil_have_no_barriers_in_the_light_and_in_the_dark(string path, string picture)
    {
        await TakeInAsync();
        foreach (var dark in new[] { false, true })
        {
            await using var desk = await walk.LookAsync(onPhone: false, dark);
            await desk.GoAsync(path);
            await Assertions.Expect(desk.Page.Locator(".loading")).ToHaveCountAsync(0);
            await desk.PictureAsync(picture + (dark ? "-dark" : ""));
            Assert.Empty(await desk.BarriersAsync());
            Assert.Empty(desk.Complaints);
        }
    }

    private async Task<int> OilingsAsync(bool withdrawn)
    {
        await using var db = await screen.Host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        return await db.Events.CountAsync(e => e.Kind == ChainEventKind.Oiling && e.Withdraws == withdrawn
            && e.Key.StartsWith(withdrawn ? "withdraw-event" : "round-"));
    }

    private Task<ImportReport> TakeInAsync()
    {
        var now = screen.Host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        var chains = new StringBuilder(
            "chain,line,position,chain_type,pitch_mm,fitted_at,fitted_counter_h,"
            + "speed_m_s,lubrication,dust,ambient_c,oil_method\n");
        for (var i = 1; i <= 12; i++)
        {
            chains.Append(FormattableString.Invariant($"OIL-{i:00},OILLINE,drive {i:00},16B-1,25.4,"))
                .Append(FormattableString.Invariant($"{now.AddDays(-60):yyyy-MM-dd},0,"))
                .AppendLine(FormattableString.Invariant($"{(i == 3 ? 2.5 : 0.6)},manual,moderate,{(i == 4 ? 40 : 22)},hand"));
        }

        return screen.Host.Services.GetRequiredService<FileImport>().ImportAsync(
            [new ImportFile("chains.csv", () => new MemoryStream(Encoding.UTF8.GetBytes(chains.ToString()))) { By = "Ina" }]);
    }
}
