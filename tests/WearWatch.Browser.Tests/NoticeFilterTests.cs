using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>A person narrows the notices by each of their controls.</summary>
public sealed class NoticeFilterTests(Screen screen, BigMill mill)
{
    [Fact]
    public async Task Each_control_narrows_the_notices_beside_the_others_and_back_takes_it_back()
    {
        var address = await mill.OpenAsync();
        await using var desk = await screen.AtDeskAsync(address: address);
        await desk.GoAsync("/notices");
        var steps = new List<NoticeFilter> { new() };
        await ShowsAsync(desk, steps[^1]);

        await desk.Page.GetByLabel("About").SelectOptionAsync(new[] { new SelectOptionValue { Label = "Limit near" } });
        await StepAsync(steps[^1] with { Kind = NoticeKind.LimitNear });
        await desk.Page.GetByLabel("act now only").CheckAsync();
        await StepAsync(steps[^1] with { UrgentOnly = true });
        await desk.Page.GetByLabel("About").SelectOptionAsync(new SelectOptionValue { Label = "anything" });
        await StepAsync(steps[^1] with { Kind = null });
        var line = (await BoardAsync(steps[^1]))[0].Line;
        await desk.Page.GetByLabel("Line").SelectOptionAsync(line);
        await StepAsync(steps[^1] with { Line = line });
        foreach (var text in await desk.Page.Locator(".notices > .notice").AllInnerTextsAsync())
            Assert.Contains(line, text, StringComparison.Ordinal);
        await desk.Page.GetByLabel("ended ones").CheckAsync();
        await StepAsync(steps[^1] with { Ended = true });

        await using var colleague = await screen.AtDeskAsync(address: address);
        await colleague.GoAsync(new Uri(desk.Page.Url).PathAndQuery);
        await ShowsAsync(colleague, steps[^1]);
        for (var i = steps.Count - 2; i >= 0; i--)
        {
            await desk.Page.GoBackAsync();
            await ShowsAsync(desk, steps[i]);
        }

        await desk.Page.GoForwardAsync();
        await ShowsAsync(desk, steps[1]);
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Notices", Exact = true }).First.ClickAsync();
        await ShowsAsync(desk, new NoticeFilter());
        Assert.Empty(desk.Complaints);

        async Task StepAsync(NoticeFilter filter)
        {
            await ShowsAsync(desk, filter);
            steps.Add(filter);
        }
    }

    private Task<IReadOnlyList<NoticeLine>> BoardAsync(NoticeFilter filter) =>
        mill.Host.Services.GetRequiredService<NoticesQuery>().AskAsync(filter, TestContext.Current.CancellationToken);

    /// <summary>
    /// Waits until the page counts what the filter leaves and shows the first of it; its address then tells the filter.
    /// </summary>
    private async Task ShowsAsync(Visit desk, NoticeFilter filter)
    {
        var notices = await BoardAsync(filter);
        await Assertions.Expect(desk.Page.Locator(".page-head [role=status]"))
            .ToHaveTextAsync(
                Show.Count(notices.Count, $"{(filter.Ended ? "ended" : "open")} notice"));
        if (notices.Count > 0)
        {
            await Assertions.Expect(desk.Page.Locator(".notices > .notice a").First).ToHaveTextAsync(notices[0].Chain);
        }
        Assert.Equal(filter, NoticeFilter.FromQuery(new Uri(desk.Page.Url).Query));
    }
}
