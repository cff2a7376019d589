using System.Net;

namespace WearWatch.Dashboard.Tests.Shell;

public sealed class HostTests(DashboardHost host) : IClassFixture<DashboardHost>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/chains")]
    [InlineData("/chains?condition=swap-now&sort=rate")]
    [InlineData("/chains/nobody")]
    [InlineData("/enter")]
    [InlineData("/enter?chain=nobody")]
    [InlineData("/import")]
    [InlineData("/lubrication")]
    [InlineData("/lubrication/interval")]
    [InlineData("/lubrication/used")]
    [InlineData("/lubrication/chains/nobody")]
    [InlineData("/notices")]
    [InlineData("/settings")]
    [InlineData("/data-sources")]
    [InlineData("/chains/nobody/signals")]
    public async Task A_page_answers_with_itself_on_an_empty_plant(string path)
    {
        var answer = await host.CreateClient().GetAsync(path, TestContext.Current.CancellationToken);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("Something went wrong on our side", text, StringComparison.Ordinal);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
        Assert.Contains("<h1", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_plant_offers_the_demo_and_the_import()
    {
        var text = await host.CreateClient().GetStringAsync("/", TestContext.Current.CancellationToken);
        Assert.Contains("Load the demo mill", text, StringComparison.Ordinal);
        Assert.Contains("href=\"/import\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_where_nothing_lives_says_so_with_404()
    {
        var answer = await host.CreateClient().GetAsync("/nowhere", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("Nothing lives at this address",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Health_answers() =>
        Assert.Equal("Healthy", await host.CreateClient().GetStringAsync("/health", TestContext.Current.CancellationToken));

    [Fact]
    public async Task Every_answer_allows_only_this_host_and_scripts_with_the_number_used_once()
    {
        using var client = host.CreateClient();
        var first = Policy(await client.GetAsync("/", TestContext.Current.CancellationToken));
        var second = Policy(await client.GetAsync("/", TestContext.Current.CancellationToken));
        Assert.Contains("default-src 'self'", first, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-eval", first, StringComparison.Ordinal);
        Assert.NotEqual(first, second);
    }

    [Fact]
    public async Task A_dark_look_is_dark_from_the_first_byte()
    {
        using var client = host.CreateClient();
        client.DefaultRequestHeaders.Add("Cookie", "wearwatch-look=software-dark");
        var text = await client.GetStringAsync("/", TestContext.Current.CancellationToken);
        Assert.Contains("content=\"dark\"", text, StringComparison.Ordinal);
        Assert.Contains("class=\"app dark\"", text, StringComparison.Ordinal);
    }

    private static string Policy(HttpResponseMessage answer) =>
        Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
}
