using System.Net;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Routing;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>
/// Every page, every answer and every file tells of a chain that lifts nothing that may hurt someone, and tells the caution.
/// All routes are asked, for one chain of each kind in each state: a new one is asked, too.
/// </summary>
public sealed partial class ForbiddenAdviceTests(LiftingPlantHost plant) : IClassFixture<LiftingPlantHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Routes of one chain, which tell the caution with it.</summary>
    public static TheoryData<string> PagesOfAChain => [.. PageRoutes.Where(IsOfAChain)];

    /// <summary>The others: they may name chains, and are to say nothing forbidden of them.</summary>
    public static TheoryData<string> OtherPages => [.. PageRoutes.Where(r => !r.Contains('{', StringComparison.Ordinal))];

    private static IEnumerable<string> PageRoutes => TypeGraph.Whole.Types
        .SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template)
        .Where(route => route is not ("/not-found" or "/error")).Order(StringComparer.Ordinal);

    [Theory]
    [MemberData(nameof(PagesOfAChain))]
    public async Task A_page_of_a_chain_that_lifts_tells_the_caution_and_nothing_forbidden(string route)
    {
        List<string> faults = [];
        foreach (var name in LiftingChains.Names) faults.AddRange(await FaultsAsync(AddressOf(route, name), mustWarn: true));
        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
    }

    [Theory]
    [MemberData(nameof(OtherPages))]
    public async Task A_page_that_names_chains_that_lift_tells_nothing_forbidden(string route)
    {
        var faults = await FaultsAsync(route, mustWarn: false);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public async Task Every_answer_and_file_tells_nothing_forbidden()
    {
        List<string> faults = [];
        var routes = plant.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Where(IsOurs)
            .Select(e => "/" + e.RoutePattern.RawText!.Trim('/'));
        foreach (var route in routes.Where(r => IsOfAChain(r) || !r.Contains('{', StringComparison.Ordinal)))
        {
            foreach (var name in IsOfAChain(route) ? LiftingChains.Names : [""])
                faults.AddRange(await FaultsAsync(AddressOf(route, name), mustWarn: false));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Distinct()));
    }

    private async Task<List<string>> FaultsAsync(string address, bool mustWarn)
    {
        using var answer = await plant.Client.GetAsync(address, Ct);
        if (!answer.IsSuccessStatusCode)
        {
            // What must be told more, or has no such thing: other tests hold that, and a refusal gives no advice.
            Assert.True(!mustWarn && answer.StatusCode < HttpStatusCode.InternalServerError, $"{address}: {answer.StatusCode}");
            return [];
        }

        if (answer.Content.Headers.ContentType?.MediaType is not { } kind || !IsText().IsMatch(kind)) return [];
        var text = await answer.Content.ReadAsStringAsync(Ct);
        var faults = AdviceText.Forbidden(text).Select(s => $"{address}: {s}").ToList();
        if (mustWarn && !AdviceText.HasCaution(text)) faults.Add($"{address}: no caution");
        return faults;
    }

    private string AddressOf(string route, string name) => Parameter().Replace(route, parameter =>
        parameter.Groups[1].Value.Equals("chain:int", StringComparison.OrdinalIgnoreCase)
            ? plant.Ids[name].ToString(System.Globalization.CultureInfo.InvariantCulture)
            : name);

    private static bool IsOfAChain(string route) => Parameter().Matches(route) is [var only]
        && only.Groups[1].Value.ToLowerInvariant() is "chain" or "chain:int" or "name";

    private static bool IsOurs(RouteEndpoint endpoint) =>
        endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET") == true
        && endpoint.Metadata.GetMetadata<MethodInfo>()?.DeclaringType?.Assembly == typeof(Program).Assembly;

    [GeneratedRegex(@"\{([^}]+)\}")]
    private static partial Regex Parameter();

    [GeneratedRegex("^text/|json|javascript|xml")]
    private static partial Regex IsText();
}
