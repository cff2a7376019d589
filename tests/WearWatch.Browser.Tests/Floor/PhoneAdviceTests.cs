using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Tests.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Every screen of the phone, as its table of screens lists them, for one chain of each lifting kind in each state: nothing
/// forbidden is told, and the caution stands on each screen of a chain.
/// </summary>
public sealed class PhoneAdviceTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_screen_of_the_phone_tells_the_caution_and_nothing_forbidden_and_answers_each_point_by_itself()
    {
        await using var host = await PlantAsync();
        await using var db = await OpenAsync(host);
        var ids = await db.Chains.ToDictionaryAsync(c => c.Name, c => c.Id, Ct);
        var address = host.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        await using var phone = await screen.OnPhoneAsync(address: address);
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(
            new() { ContentType = "application/json", Body = """{"id":null,"name":""}""" }));
        await phone.Page.GotoAsync(address + "/floor/");
        await phone.Page.ReadyAsync();

        var screens = JsonSerializer.Deserialize<string[][]>(await phone.Page.EvaluateAsync<string>("""
            async () => {
              const { ofChain, others } = await import('/floor/screens.js');
              return JSON.stringify([Object.keys(ofChain), Object.keys(others)]);
            }
            """))!;
        List<string> faults = [];
        foreach (var hash in screens[1].Where(s => s != "label").Select(s => "#/" + s))
            faults.AddRange(await FaultsAsync(phone, hash, mustWarn: false));
        foreach (var (name, id) in ids)
        {
            foreach (var what in screens[0])
            {
                faults.AddRange((await FaultsAsync(phone, $"#/chain/{id}{(what.Length > 0 ? "/" + what : "")}", mustWarn: true))
                    .Select(fault => $"{name}: {fault}"));
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
        await EachPointByItselfAsync(phone, host, ids["leaf-low"]);
        Assert.Empty(phone.Complaints);
        await ExamineWithoutSignalAsync(phone, host, ids["leaf-near"]);
    }

    /// <summary>One point is answered: the others stay "not inspected", on the phone and at the server.</summary>
    private static async Task EachPointByItselfAsync(Visit phone, DashboardHost host, int chainId)
    {
        await phone.Page.ShowAsync($"#/chain/{chainId}/do");
        await Assertions.Expect(phone.Page.Locator("#content")).Not.ToContainTextAsync("Shortened");
        await phone.Page.ShowAsync($"#/chain/{chainId}/look");
        var points = ChainFamily.Named("leaf").CheckPoints(lifts: true);
        await Assertions.Expect(phone.Page.Locator(".points > li")).ToHaveCountAsync(points.Count);
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Button, new() { Name = "All the rest" })).ToHaveCountAsync(0);
        Assert.Equal(0, await phone.Page.Locator(".points input[type=radio]:checked").CountAsync());
        await phone.Page.Locator(".points > li").First.GetByRole(AriaRole.Radio, new() { Name = "in order", Exact = true })
            .TapAsync();
        Assert.Equal(1, await phone.Page.Locator(".points input[type=radio]:checked").CountAsync());
        await phone.PictureAsync("floor-look-lifting-phone");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync(
            $"1 point in order; {points.Count - 1} not inspected");
        for (var wait = 0; wait < 100; wait++)
        {
            await using var db = await OpenAsync(host);
            if (await db.Looks.OrderByDescending(l => l.Id).FirstOrDefaultAsync(l => l.ChainId == chainId, Ct) is { } look)
            {
                Assert.Equal(points[0].Point, Assert.Single(look.Findings).Point);
                return;
            }

            await Task.Delay(200, Ct);
        }

        Assert.Fail("The look did not come to the server.");
    }

    /// <summary>A report is kept without signal; what it leaves out is not examined; with signal the register has it.</summary>
    private static async Task ExamineWithoutSignalAsync(Visit phone, DashboardHost host, int chainId)
    {
        await phone.Page.ShowAsync($"#/chain/{chainId}/exam");
        await phone.Page.Context.SetOfflineAsync(true);
        var points = phone.Page.Locator(".points > li");
        await points.First.GetByRole(AriaRole.Radio, new() { Name = "nothing found", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".report-says")).ToContainTextAsync("Not all points examined");
        await points.Nth(1).GetByRole(AriaRole.Radio, new() { Name = "found", Exact = true }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".report-says")).ToContainTextAsync("Out of use at once");
        await points.Nth(1).GetByLabel("Value, place, method").FillAsync("a pin stands out by 1 mm, third above the anchor");
        await phone.Page.GetByLabel("Examiner").FillAsync("Ola");
        await phone.PictureAsync("floor-examination-phone");
        Assert.Empty(await phone.BarriersAsync());
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep the report" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".saved")).ToContainTextAsync("2 of ");
        await phone.Page.Context.SetOfflineAsync(false);
        for (var wait = 0; wait < 150; wait++)
        {
            await using var db = await OpenAsync(host);
            if (await db.Examinations.FirstOrDefaultAsync(e => e.ChainId == chainId, Ct) is { } report)
            {
                Assert.Equal((ExaminationResult.OutOfUse, "Ola", 2), (report.Result, report.Examiner, report.Points.Count));
                return;
            }

            await Task.Delay(200, Ct);
        }

        Assert.Fail("The report did not come to the server.");
    }

    private static async Task<List<string>> FaultsAsync(Visit phone, string hash, bool mustWarn)
    {
        await phone.Page.ShowAsync(hash);
        var text = await phone.Page.Locator("#content").InnerHTMLAsync();
        var faults = AdviceText.Forbidden(text).Select(s => $"{hash}: {s}").ToList();
        if (mustWarn && !AdviceText.HasCaution(text)) faults.Add($"{hash}: no caution");
        if (AdviceText.ShowsGreen(text)) faults.Add($"{hash}: green");
        if (text.Contains("could not be drawn", StringComparison.Ordinal)) faults.Add($"{hash}: not drawn");
        return faults;
    }

    private static Task<WearDb> OpenAsync(DashboardHost host) =>
        host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);

    private static async Task<DashboardHost> PlantAsync()
    {
        var host = new DashboardHost { StandsStill = true };
        host.UseKestrel(0);
        host.StartServer();
        var report = await host.Services.GetRequiredService<FileImport>()
            .ImportAsync(LiftingChains.Files(TimeProvider.System.GetUtcNow()), null, Ct);
        await LiftingChains.ConfirmAsync(report, await OpenAsync(host), host.Services.GetRequiredService<IntakeDesk>());
        foreach (var name in LiftingChains.Found)
        {
            var look = new NewInspection(
                $"look-{name}", name, null, null, [new(InspectionPoint.CrackedOrTurnedParts, Found: true)], "Ina");
            Assert.IsType<IntakeAnswer.Taken>(await host.Services.GetRequiredService<InspectionDesk>().TakeAsync(look, Ct));
        }

        var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().Date);
        Assert.IsType<IntakeAnswer.Taken>(await host.Services.GetRequiredService<AppointmentDesk>().AppointAsync(
            new AppointmentRow
            {
                Person = "Ola",
                Qualification = "trained by the maker",
                From = today.AddYears(-1),
                Until = today.AddYears(1),
                AppointedBy = "the head",
            }, Ct));
        return host;
    }
}
