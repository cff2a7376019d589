using System.Net;
using Microsoft.AspNetCore.Mvc.Testing;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>Addresses that were renamed lead on, and old calls of the API are answered.</summary>
public sealed class MovedAddressTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    [Theory]
    [InlineData("/oil", "/lubrication")]
    [InlineData("/oil/used?x=1", "/lubrication/used?x=1")]
    [InlineData("/oil/chains/K-1", "/lubrication/chains/K-1")]
    [InlineData("/arrivals", "/data-sources")]
    [InlineData("/people/keys", "/people/api-keys")]
    [InlineData("/chains/K%201/card", "/chains/K%201/master-data")]
    [InlineData("/engineering/history/looks.csv", "/engineering/history/inspections.csv")]
    [InlineData("/engineering/lives/paper.svg", "/engineering/lives/probability-plot.svg")]
    public async Task An_old_address_leads_on_for_good(string old, string now)
    {
        using var client = plant.Host.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        using var answer = await client.GetAsync(old, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.PermanentRedirect, answer.StatusCode);
        Assert.Equal(now, answer.Headers.Location!.OriginalString);
    }

    [Theory]
    [InlineData("/api/v1/oil/due", "/api/v1/lubrication/due")]
    [InlineData("/api/v1/chains/K-1/looks", "/api/v1/chains/K-1/inspections")]
    [InlineData("/api/v1/chains/K-1/card", "/api/v1/chains/K-1/master-data")]
    [InlineData("/api/v1/chains/K-1/card/changes", "/api/v1/chains/K-1/master-data/changes")]
    public async Task An_old_call_is_answered_without_a_redirect(string old, string now)
    {
        using var client = plant.Host.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        using var first = await client.GetAsync(old, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal(
            await client.GetStringAsync(now, TestContext.Current.CancellationToken),
            await first.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
