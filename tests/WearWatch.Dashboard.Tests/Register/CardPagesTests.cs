using System.Net;

namespace WearWatch.Dashboard.Tests.Register;

public sealed class CardPagesTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    [Theory]
    [InlineData("/chains/new", "Name on the label")]
    [InlineData("/chains/K-1/master-data", "set by the plant")]
    [InlineData("/chains/K-1/master-data", "taken into the register")]
    [InlineData("/chains/nobody/master-data", "No chain is called nobody")]
    [InlineData("/chains/K-1/done", "Stop, isolate, lock and tag")]
    [InlineData("/chains/K-1/done", "Next inspection of the lubricator")]
    [InlineData("/chains/nobody/done", "No chain is called nobody")]
    [InlineData("/chains/K-1", "/chains/K-1/done")]
    [InlineData("/chains/K-1", "/chains/K-1/master-data")]
    public async Task A_page_of_the_register_tells_what_it_is_for(string path, string expected)
    {
        var text = WebUtility.HtmlDecode(
            await plant.Host.CreateClient().GetStringAsync(path, TestContext.Current.CancellationToken));
        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
    }
}
