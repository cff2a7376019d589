using System.Net;
using System.Text;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Who may do what with the swap plan over HTTP: as on the page, everyone looks and proposes, planners keep.</summary>
public sealed class PlanRolesTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Nothing = """{"revision":0,"swaps":[]}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Everyone_who_is_signed_in_sees_the_plan_and_lets_one_be_proposed_and_only_planners_keep_one()
    {
        using var planner = await plant.Administrator.AddAsync("Pia", 2);
        Assert.Equal(HttpStatusCode.OK, (await plant.Reader.Http.GetAsync("/api/v1/plan", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await plant.Reader.TellAsync("/api/v1/plan/proposals", "{}", "p")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await KeepAsync(plant.Reader)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await KeepAsync(plant.Technician)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await KeepAsync(planner)).StatusCode);
        using var stranger = new Caller(plant.Host);
        Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.Http.GetAsync("/api/v1/plan", Ct)).StatusCode);
    }

    private static async Task<HttpResponseMessage> KeepAsync(Caller caller)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, "/api/v1/plan");
        request.Content = new StringContent(Nothing, Encoding.UTF8, "application/json");
        request.Headers.Add("Idempotency-Key", "keep");
        return await caller.Http.SendAsync(request, Ct);
    }
}
