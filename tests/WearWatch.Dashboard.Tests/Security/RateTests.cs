using System.Net;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Nobody takes the others' turn: requests are counted by person, key or address (OWASP ASVS 5, V2.4.1).</summary>
public sealed class RateTests : IAsyncLifetime
{
    private readonly StaffedPlant plant = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => plant.InitializeAsync();

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Fact]
    public async Task One_person_who_asks_without_end_is_told_to_wait_and_the_others_go_on()
    {
        HttpResponseMessage? refused = null;
        for (var i = 0; i < 60 && refused is null; i++)
        {
            var answers = await Task.WhenAll(Enumerable.Range(0, 100).Select(_ =>
                plant.Reader.Http.GetAsync("/api/v1/nowhere", Ct)));
            refused = answers.FirstOrDefault(a => a.StatusCode == HttpStatusCode.TooManyRequests);
        }

        Assert.NotNull(refused);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType?.MediaType);
        Assert.Equal(TimeSpan.FromSeconds(60), refused.Headers.RetryAfter?.Delta);
        Assert.Equal(HttpStatusCode.OK, (await plant.Technician.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await plant.Reader.Http.GetAsync("/health", Ct)).StatusCode);
    }
}
