using System.Net;

namespace WearWatch.Dashboard.Tests.Register;

public sealed class CardPagesTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    [Theory]
    [InlineData("/chains/new", "Name on the label")]
    [InlineData("/chains/K-1/card", "set by the plant")]
    [InlineData("/chains/K-1/card", "taken into the register")]
    [InlineData("/chains/nobody/card", "No chain is called nobody")]
    [InlineData("/chains/K-1/done", "Stop, isolate, lock and tag")]
    [InlineData("/chains/K-1/done", "Next look at the oiler")]
    [InlineData("/chains/nobody/done", "No chain is called nobody")]
    [InlineData("/chains/K-1", "/chains/K-1/done")]
    [InlineData("/chains/K-1", "/chains/K-1/card")]
    public async Task A_page_of_the_register_tells_what_it_is_for(string path, string expected)
    {
        var text = WebUtility.HtmlDecode(
            await plant.Host.CreateClient().GetStringAsync(path, TestContext.Current.CancellationToken));
        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
    }
}
