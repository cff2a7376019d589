using WearWatch.Dashboard.Tests.Shell;
using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Tests.Rounds;

/// <summary>The rounds ask first for the readings on which a decision hangs.</summary>
public sealed class MeasureFirstTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task At_most_ten_chains_are_named_the_never_measured_first_then_by_worth()
    {
        var (chains, money) = await mill.Get<MeasureFirstQuery>().AskAsync(Ct);
        Assert.InRange(chains.Count, 1, MeasureFirstQuery.Most);
        Assert.Equal("EUR", money);
        Assert.Equal(chains.OrderBy(c => c.Worth is not null).Select(c => c.Chain.Name), chains.Select(c => c.Chain.Name));
        var worths = chains.Where(c => c.Worth > 0).Select(c => c.Worth!.Value).ToList();
        Assert.Equal(worths.OrderDescending(), worths);
    }

    [Fact]
    public async Task The_page_of_rounds_shows_them_above_the_rounds()
    {
        var (chains, _) = await mill.Get<MeasureFirstQuery>().AskAsync(Ct);
        var page = await mill.Client.GetStringAsync(new Uri("/rounds", UriKind.Relative), Ct);
        var panel = page[page.IndexOf("Measure first", StringComparison.Ordinal)..];
        Assert.All(chains, c => Assert.Contains(c.Chain.Name, panel[..panel.IndexOf("</section>", StringComparison.Ordinal)],
            StringComparison.Ordinal));
    }
}
