using System.Net;

namespace WearWatch.Dashboard.Tests.Shell;

public sealed class SmallPlantPagesTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    [Theory]
    [InlineData("/", "1")]
    [InlineData("/chains/K-1", "longer than new")]
    [InlineData("/chains/K-2", "Not measured yet")]
    [InlineData("/enter?chain=K-1", "Length")]
    [InlineData("/notices", "Notices")]
    [InlineData("/data-sources", "set aside")]
    [InlineData("/chains/K-1/signals", "production calendar is used")]
    [InlineData("/lubrication/chains/K-1", "Method, lubricant, amount")]
    [InlineData("/lubrication/interval", "All chains together")]
    [InlineData("/import", "Past imports")]
    public async Task A_page_tells_what_it_is_for_on_a_small_plant(string path, string expected)
    {
        using var client = plant.Host.CreateClient();
        var answer = await client.GetAsync(path, TestContext.Current.CancellationToken);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
    }
}
