using System.Net;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Routing;
using WearWatch.Dashboard.Tests.Architecture;
using WearWatch.Dashboard.Tests.Language;

namespace WearWatch.Dashboard.Tests.Shell;

/// <summary>
/// Every page and every file of the program answers on the demo mill; a new one without a sample for what it asks fails.
/// </summary>
public sealed partial class EveryAddressTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    /// <summary>What the calculators must be told; without it they say what is missing, which other tests hold.</summary>
    private static readonly Dictionary<string, string> Questions = new()
    {
        ["/api/v1/gauge"] = "?pitch_mm=25.4&pitches=40&length=1024",
        ["/api/v1/link-gauge"] = "?pitch_mm=15&family=round_link&link_diameter_new=5&one_link=15.2",
        ["/api/v1/limit"] = "?teeth=19,57",
        ["/api/v1/drive"] = "?type=16B-1&teeth=19&driven_teeth=57&rpm=100&power=2%20kW&pitches=120",
        ["/api/v1/lubrication"] = "?type=16B-1&speed=1",
        ["/plan/stop.pdf"] = "?id=none",
        ["/plan/stop.xlsx"] = "?id=none",
        ["/plan/stop.csv"] = "?id=none",
        ["/plan/stop.json"] = "?id=none",
    };

    /// <summary>What there is only once a plan was kept or a row was refused; PlanFilesTests and browser tests do.</summary>
    private static readonly string[] NotThere =
    [
        "/plan/card/{chain}/job-card.pdf", "/plan/stop.pdf", "/plan/stop.xlsx", "/plan/stop.csv", "/plan/stop.json",
        "/import/{id:int}/refused.csv",
    ];

    /// <summary>What only a chain of round links answers.</summary>
    private static readonly string[] OfLinks = ["/api/v1/chains/{chain}/links"];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>
    /// All routes of pages but the two that other addresses answer with: when nothing is there, and when something went wrong.
    /// </summary>
    public static TheoryData<string> Pages =>
    [
        .. TypeGraph.Whole.Types.SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template)
            .Where(route => route is not ("/not-found" or "/error")).Order(StringComparer.Ordinal)
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_answers_with_itself_on_the_demo_mill(string route)
    {
        var answer = await mill.Client.GetAsync(AddressOf(route), Ct);
        var text = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("<h1", text, StringComparison.Ordinal);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Something went wrong on our side", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing lives at this address", text, StringComparison.Ordinal);
        Assert.Empty(PlainWords.Banned(VisibleText.OfPage(text)).Concat(ReadingRules.Faults(text)).ToList());
    }

    [Fact]
    public async Task Every_answer_of_the_API_and_every_file_is_there_on_the_demo_mill()
    {
        var routes = mill.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Where(IsOurs)
            .Select(e => e.RoutePattern.RawText!).ToList();
        Assert.True(routes.Count > 50, "The program serves more than these: " + string.Join(", ", routes));
        List<string> refused = [];
        foreach (var route in routes)
        {
            using var answer = await mill.Client.GetAsync(AddressOf(route), Ct);
            if (NotThere.Contains(route) && answer.StatusCode == HttpStatusCode.NotFound) continue;
            if (!answer.IsSuccessStatusCode)
                refused.Add($"{(int)answer.StatusCode} {route}: {await answer.Content.ReadAsStringAsync(Ct)}");
            else if ((await answer.Content.ReadAsByteArrayAsync(Ct)).Length == 0) refused.Add($"{route}: empty");
        }

        Assert.True(refused.Count == 0, string.Join('\n', refused));
    }

    private static bool IsOurs(RouteEndpoint endpoint) =>
        endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET") == true
        && endpoint.Metadata.GetMetadata<MethodInfo>()?.DeclaringType?.Assembly == typeof(Program).Assembly;

    private string AddressOf(string route) => AddressOf(mill, route);

    /// <summary>An address of a route on the demo mill.</summary>
    internal static string AddressOf(DemoMillHost mill, string route) => Parameter().Replace(route, parameter =>
    {
        var name = parameter.Groups[1].Value.ToLowerInvariant();
        if (OfLinks.Contains(route)) name = "chain of links";
        Assert.True(mill.Samples.TryGetValue(name, out var sample), $"Give {route} a sample for {name}.");
        return Uri.EscapeDataString(sample);
    }) + Questions.GetValueOrDefault("/" + route.Trim('/'));

    [GeneratedRegex(@"\{([^}]+)\}")]
    private static partial Regex Parameter();
}
