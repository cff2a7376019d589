using System.Text;
using System.Text.Json.Nodes;
using WearWatch.Dashboard.Tests.Api;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>
/// Requests that nobody meant, from a fixed seed: none is answered by a fault of ours, none is taken that is wrong.
/// </summary>
/// <remarks>A part runs in every run; all 20,000 with <c>tests/run --long</c>.</remarks>
public sealed class FuzzTests(ApiCaller api) : IClassFixture<ApiCaller>
{
    private const int Seed = 22;

    private static readonly string[] paths =
    [
        "/api/v1/readings", "/api/v1/events", "/api/v1/inspections", "/api/v1/chains", "/api/v1/chains/K-1/card",
        "/api/v1/chains/K-1/readings", "/api/v1/gauge", "/api/v1/limit", "/api/v1/drive", "/api/v1/lubrication", "/api/v1/plan",
        "/api/v1/floor/rounds", "/api/v1/imports", "/api/v1/notices/1", "/api/v1/lifting", "/api/v1/history/readings", "/units",
        "/language", "/chains", "/people/sign-in",
    ];

    private static readonly string[] methods = ["GET", "POST", "PUT", "DELETE", "PATCH"];

    private static readonly string[] types =
    [
        "application/json", "application/json; charset=utf-16", "application/json; charset=nonsense", "text/plain",
        "multipart/form-data; boundary=x", "application/x-www-form-urlencoded", "image/jpeg", "nonsense",
    ];

    private static readonly string[] bodies =
    [
        """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4","unit":"mm"}""",
        """{"chain":"K-1","event":"oiling","taken_at":"2026-04-01T00:00:00Z"}""",
        """{"chain":"K-1","taken_at":"2026-04-01T00:00:00Z","findings":[{"point":"general","found":true,"note":"x"}]}""",
        """{"line":"Press","day":"2026-04-01"}""", "{}", "[]", "null", "", "\"", "{\"a\":", "--x\r\n\r\n--x--",
    ];

    private static readonly string[] odd =
    [
        "null", "-1", "1e309", "\"\"", "\"\\u0000\"", "[null]", "{}", "true", "\"0001-01-01T00:00:00Z\"",
        "\"9999-12-31T23:59:59Z\"",
        "99999999999999999999", "\"'; DROP TABLE Readings; --\"", "\"=1+1\"", "\"\\ud800\"", "\"<script>\"", "0.1e-400",
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(2_000)]
    [InlineData(20_000, Explicit = true)]
    public async Task No_request_is_answered_by_a_fault_of_ours_and_memory_stays_bounded(int requests)
    {
        var dice = new Random(Seed);
        List<string> faults = [];
        var before = GC.GetTotalMemory(forceFullCollection: true);
        for (var i = 0; i < requests; i++)
        {
            using var request = Make(dice, i);
            using var answer = await api.Http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Ct);
            if ((int)answer.StatusCode >= 500) faults.Add($"{i}: {request.Method} {request.RequestUri} {(int)answer.StatusCode}");
            if (request.RequestUri!.OriginalString.StartsWith("/api/", StringComparison.Ordinal) && (int)answer.StatusCode >= 400
                && answer.Content.Headers.ContentType?.MediaType != "application/problem+json")
                faults.Add($"{i}: {request.Method} {request.RequestUri} {(int)answer.StatusCode} is no problem");
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Take(40)));
        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, long.MinValue, 100_000_000);
        // What was taken is what may be: nothing of a chain that is not there, no length over no pitch.
        foreach (var reading in (await api.GetAsync("/api/v1/chains/K-1/readings")).EnumerateArray())
            Assert.InRange(reading.GetProperty("pitches").GetInt32(), 1, 100_000);
    }

    private static HttpRequestMessage Make(Random dice, int i)
    {
        var path = Pick(dice, paths);
        if (dice.Next(3) == 0) path += $"?{Pick(dice, ["take", "skip", "due_before", "lifts", "teeth", "pitch_mm", "x"])}="
            + Uri.EscapeDataString(Pick(dice, odd));
        var request = new HttpRequestMessage(new HttpMethod(Pick(dice, methods)), path);
        if (dice.Next(5) > 0) request.Headers.TryAddWithoutValidation("Idempotency-Key", $"fuzz {dice.Next(50)}");
        if (request.Method == HttpMethod.Get) return request;
        var body = Encoding.UTF8.GetBytes(Bend(dice, Pick(dice, bodies)));
        for (var flips = dice.Next(3) == 0 ? dice.Next(8) : 0; flips > 0 && body.Length > 0; flips--)
            body[dice.Next(body.Length)] = (byte)dice.Next(256);
        request.Content = new ByteArrayContent(body);
        request.Content.Headers.TryAddWithoutValidation("Content-Type", dice.Next(2) == 0 ? types[0] : Pick(dice, types));
        return request;
    }

    /// <summary>Puts something odd where a value was, at times.</summary>
    private static string Bend(Random dice, string body)
    {
        if (dice.Next(2) == 0 || !body.StartsWith("{\"", StringComparison.Ordinal) || !body.EndsWith('}')) return body;
        var told = JsonNode.Parse(body)!.AsObject();
        var parts = told.Select(p => $"\"{p.Key}\":{(dice.Next(3) == 0 ? Pick(dice, odd) : p.Value?.ToJsonString() ?? "null")}");
        return "{" + string.Join(',', parts) + "}";
    }

    private static T Pick<T>(Random dice, T[] of) => of[dice.Next(of.Length)];
}
