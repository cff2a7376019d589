using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>A program that speaks to the API of a small plant.</summary>
public sealed class ApiCaller : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    public HttpClient Http { get; private set; } = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        Http = host.CreateClient();
        var report = await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        Assert.Equal("", string.Join("; ", report.Files.SelectMany(f => f.Remarks)));
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    public async Task<JsonElement> GetAsync(string path) => await Http.GetFromJsonAsync<JsonElement>(path, Ct);

    public async Task<HttpResponseMessage> TellAsync(string path, string body, string? key)
    {
        using var request = new HttpRequestMessage(
            HttpMethod.Post, path)
        { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        if (key is not null) request.Headers.Add("Idempotency-Key", key);
        return await Http.SendAsync(request, Ct);
    }

    public async Task<JsonElement> ImportAsync(string csv, string query = "")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/imports" + query)
        {
            Content = new MultipartFormDataContent { { new StringContent(csv), "files", "readings.csv" } },
        };
        request.Headers.Add("Idempotency-Key", "import");
        var answer = await Http.SendAsync(request, Ct);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
    }

    public static async Task<long> IdAsync(HttpResponseMessage answer) =>
        (await answer.Content.ReadFromJsonAsync<JsonElement>(Ct)).GetProperty("id").GetInt64();

    public static async Task<JsonElement> AssertProblemAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
    }
}
