using System.Text.Json.Nodes;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>The API describes itself whole: every operation, parameter and answer, and the key of every write.</summary>
public sealed class ApiDescriptionTests(ApiCaller api) : IClassFixture<ApiCaller>
{
    /// <summary>What changes nothing of the plant, or is the same whenever it comes, needs no key.</summary>
    private static readonly string[] withoutKey = ["post /api/v1/plan/proposals", "post /api/v1/readings/question"];

    [Fact]
    public async Task Every_operation_says_what_it_does_what_its_parameters_mean_and_which_write_needs_a_key()
    {
        var described = JsonNode.Parse(await api.Http.GetStringAsync("/openapi/v1.json", TestContext.Current.CancellationToken))!;
        List<string> wrong = [];
        var seen = 0;
        foreach (var (path, methods) in described["paths"]!.AsObject())
        {
            foreach (var (method, operation) in methods!.AsObject())
            {
                seen++;
                var (name, parameters) = ($"{method} {path}", operation!["parameters"]?.AsArray() ?? []);
                if (string.IsNullOrWhiteSpace((string?)operation["summary"])) wrong.Add($"{name}: no summary");
                if (operation["tags"] is not JsonArray { Count: > 0 }) wrong.Add($"{name}: no tag");
                wrong.AddRange(parameters.Where(p => string.IsNullOrWhiteSpace((string?)p!["description"]))
                    .Select(p => $"{name}: {p!["name"]} has no meaning"));
                var hasKey = parameters.Any(p => (string?)p!["name"] == "Idempotency-Key" && (string?)p["in"] == "header");
                if (hasKey == (method == "get" || withoutKey.Contains(name))) wrong.Add($"{name}: key {hasKey}");
                if (method != "get" && operation["requestBody"] is null) wrong.Add($"{name}: no body");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(seen >= 55, $"only {seen} operations");
        Assert.Equal("bearer", (string?)described["components"]!["securitySchemes"]!["key"]!["scheme"]);
    }
}
