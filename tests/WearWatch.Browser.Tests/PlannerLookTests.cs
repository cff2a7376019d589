using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>
/// The planner's pages in German and Spanish: no English is left, nothing is cut, nothing stands over the edge.
/// </summary>
public sealed class PlannerLookTests(Screen screen)
{
    private static readonly (string Path, string Whole)[] pages =
    [
        ("/plan", ".plan-grid"), ("/plan/inputs", ".table"), ("/plan/orders", ".plan-places"), ("/plan/done", ".notices"),
        ("/plan/card/D-2", ".job-card"), ("/plan/card/P-2", ".job-card"),
    ];

    private static readonly string[] lines = ["Debarking", "Press"];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(LanguageLookTests.Languages), MemberType = typeof(LanguageLookTests))]
    public async Task Every_page_of_the_planner_stands_in_its_language(string code, bool onPhone)
    {
        await using var host = await PlannedMillAsync();
        var address = host.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        await using var visit = onPhone
            ? await screen.OnPhoneAsync(address: address, locale: code)
            : await screen.AtDeskAsync(address: address, locale: code);
        List<string> faults = [];
        foreach (var (path, whole) in pages)
        {
            await visit.GoAsync(path);
            await visit.Page.Locator(whole).First.WaitForAsync();
            if (path == "/plan") await visit.Page.Locator("[data-chain=D-2]").ClickAsync();
            if (path == "/plan") await visit.Page.Locator(".swap-panel").WaitForAsync();
            await visit.PictureAsync($"{code}-{(onPhone ? "phone" : "desk")}{path.Replace('/', '-')}");
            Assert.Equal(code, await visit.Page.Locator("html").GetAttributeAsync("lang"));
            if (await visit.OverTheEdgeAsync() is { Length: > 0 } over) faults.Add($"{path}: {over}");
            faults.AddRange((await LanguageLookTests.CutAsync(visit.Page)).Select(cut => $"{path}: cut: {cut}"));
            faults.AddRange((await visit.EnglishAsync()).Select(text => $"{path}: English: {text}"));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.Empty(visit.Complaints);
    }

    /// <summary>A mill with a plan that is kept, conflicts, chains that hold a load, and swaps begun and reported.</summary>
    private static async Task<DashboardHost> PlannedMillAsync()
    {
        var host = await PlanTests.MillAsync(("D-2", 20), ("P-1", 0.01));
        var services = host.Services;
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var inputs = services.GetRequiredService<PlanInputs>();
        await inputs.AddAsync(
            [.. lines.Select(line => new WindowRule
            {
                Id = line,
                Line = line,
                FirstStart = now.UtcDateTime.Date.AddDays(3).AddHours(6),
                Length = TimeSpan.FromHours(1.5),
                Recurrence = "FREQ=WEEKLY;INTERVAL=2",
                Crew = "A",
                CrewHours = 2,
            })], Ct);
        await inputs.SaveAsync(new SwapTermsLine("P-2", "", "", 2.5, 2, WithSprockets: true), Ct);
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var chains = await db.Chains.ToDictionaryAsync(c => c.Name, Ct);
        db.Spares.Add(
            new SpareRow { Kind = "Chain", Designation = "16B-1", InStock = 100, LeadDays = 60, PackSize = 160, Price = 3.25 });
        db.Swaps.Add(new SwapRow
        {
            ChainId = chains["D-1"].Id,
            WindowId = "stop",
            Start = now.AddHours(-2),
            End = now.AddHours(6),
        });
        db.Swaps.Add(new SwapRow
        {
            ChainId = chains["P-2"].Id,
            WindowId = "stop",
            Start = now.AddDays(-2),
            End = now.AddDays(-1.5),
            Outcome = SwapEnd.Done,
            OutcomeBy = "Ana",
            OutcomeAt = now.AddDays(-1),
            PartsTaken = [new PartTaken("Chain", "16B-1", 80), new PartTaken("ConnectingLink", "16B-1", 1)],
        });
        await db.SaveChangesAsync(Ct);
        var draft = new PlanDraft(await services.GetRequiredService<PlanQuery>().AskAsync(Ct));
        await draft.ProposeAsync(stop: Ct);
        draft.Move("P-2", draft.Picture.Input.Windows.First(w => w.Line == "Press").Id);
        await services.GetRequiredService<PlanKeeping>().KeepAsync(draft, "Ana", Ct);
        return host;
    }
}
