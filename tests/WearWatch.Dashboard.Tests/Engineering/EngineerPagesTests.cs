using System.Net;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>The desk's pages and files on an empty plant.</summary>
public sealed class EngineerPagesTests(DashboardHost host) : IClassFixture<DashboardHost>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/engineering")]
    [InlineData("/engineering/lives?by=line&paper=lognormal&show=Press")]
    [InlineData("/engineering/record")]
    [InlineData("/engineering/record?source=remade&at=90&by=dust")]
    [InlineData("/engineering/drivers?chain=nobody")]
    [InlineData("/engineering/changes")]
    [InlineData("/engineering/costs?by=line")]
    [InlineData("/engineering/compare?by=line&a=Press&b=Drying")]
    [InlineData("/engineering/report?month=2026-01")]
    [InlineData("/engineering/data")]
    public async Task A_page_of_the_desk_answers_with_its_tabs_on_an_empty_plant(string path)
    {
        var answer = await host.CreateClient().GetAsync(path, Stop);
        var text = await answer.Content.ReadAsStringAsync(Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
        Assert.Contains("desk-tabs", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lives.csv", "chain,line,group,life,hours")]
    [InlineData("lives/survival.csv", "group,hours,at_risk")]
    [InlineData("lives/probability-plot.csv?paper=lognormal", "group,hours,failed")]
    [InlineData("record.csv", "chain,line,model,life_share")]
    [InlineData("record/calibration.csv?at=75", "stated,reached,of")]
    [InlineData("drivers/effects.csv", "of,step,rate_factor")]
    [InlineData("drivers/chains.csv", "chain,line,rate_pct_per_1000h")]
    [InlineData("changes.csv", "chain,line,raised_at")]
    [InlineData("costs.csv?by=line", "group,year,running_h")]
    [InlineData("compare.csv?by=line", "measure,a,b")]
    [InlineData("drivers/partial.csv", "quantity,value,rate_factor")]
    [InlineData("drivers/learning.csv", "chains,error_of_ln_rate")]
    public async Task Every_table_is_a_file_with_its_header(string file, string header) =>
        Assert.StartsWith(
            header, await host.CreateClient().GetStringAsync("/engineering/" + file, Stop), StringComparison.Ordinal);
}
