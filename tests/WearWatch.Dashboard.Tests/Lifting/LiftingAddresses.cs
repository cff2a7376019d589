using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Routing;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>Every address of ours that a plant answers, for each of its lifting chains; found by asking the routes.</summary>
internal static partial class LiftingAddresses
{
    /// <summary>What the bench is asked about chains that lift, where an address needs a question.</summary>
    private static readonly Dictionary<string, string[]> Questions = new()
    {
        ["/api/v1/gauge"] =
        [
            "pitch_mm=25.4&pitches=11&length=280&unit=mm&family=leaf", "pitch_mm=25.4&pitches=11&length=290&unit=mm&family=leaf",
            "pitch_mm=25.4&pitches=11&length=287&unit=mm&lifts=yes",
        ],
        ["/api/v1/limit"] = ["family=leaf&elongation_pct=2.2", "type=16B-1&lifts=yes&take_up_mm=60&chain_pitches=120"],
        ["/api/v1/drive"] = ["type=16B-1&lifts=yes&teeth=19&driven_teeth=38&rpm=20&power=0.01&centre=1000&unit=mm"],
        ["/api/v1/lubrication"] = ["pitch_mm=25.4&family=leaf&speed=0.3&ambient_c=20", "pitch_mm=25.4&lifts=yes&ambient_c=250"],
        ["/api/v1/link-gauge"] =
            ["pitch_mm=15&family=round_link&link_diameter_new=5&one_link=15.2&over_links=166.5&d1=4.1&d2=4.9"],
    };

    /// <summary>The routes of pages.</summary>
    public static IEnumerable<string> Pages => TypeGraph.Whole.Types
        .SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template)
        .Where(route => route is not ("/not-found" or "/error")).Order(StringComparer.Ordinal);

    /// <summary>
    /// The routes of answers and files, but for the phone's dictionary: it has every word for every chain and says none of one.
    /// What the phone says of a chain that lifts, its own tests read from its screens.
    /// </summary>
    public static IEnumerable<string> Files(LiftingPlantHost plant) =>
        plant.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Where(IsOurs)
            .Select(e => "/" + e.RoutePattern.RawText!.Trim('/')).Where(route => route != "/floor/language/{code}.json")
            .Distinct().Order(StringComparer.Ordinal);

    /// <summary>Whether an address of the route tells of one chain.</summary>
    public static bool IsOfAChain(string route) => Parameter().Matches(route).Any(p => IsChain(p.Groups[1].Value));

    /// <summary>The addresses of a route. A parameter that is not known here fails: say what stands for it.</summary>
    public static IEnumerable<string> Of(string route, LiftingPlantHost plant)
    {
        IEnumerable<string> found = Questions.GetValueOrDefault(route)?.Select(question => $"{route}?{question}") ?? [route];
        foreach (var parameter in Parameter().Matches(route).Select(m => m.Groups[1].Value).Where(p => !IsChain(p)))
        {
            var values = Values(parameter.ToLowerInvariant(), plant);
            found = [.. found.SelectMany(a => values.Select(v => a.Replace($"{{{parameter}}}", v, StringComparison.Ordinal)))];
        }

        return IsOfAChain(route)
            ? [.. found.SelectMany(a => LiftingChains.Names.Select(name => OfChain(a, name, plant)))]
            : found;
    }

    private static string OfChain(string route, string name, LiftingPlantHost plant) => Parameter().Replace(
        route, p => p.Groups[1].Value.Equals("chain:int", StringComparison.OrdinalIgnoreCase)
            ? plant.Ids[name].ToString(CultureInfo.InvariantCulture)
            : name);

    private static IReadOnlyList<string> Values(string parameter, LiftingPlantHost plant) => parameter switch
    {
        "line" => ["Store"],
        "table" => [.. plant.Get<HistoryTables>().All.Select(t => t.Name)],
        "mark" => ["ABC123"],
        "designation" => ["16B-1", "LH1634", "8x24"],

        // Photos, scans and imports have no text of ours about a chain: what there is of them says so to any number.
        "id:int" or "id:long" or "paper:long" => ["1"],
        _ => throw new InvalidOperationException($"What stands for {{{parameter}}} in an address?"),
    };

    private static bool IsChain(string parameter) =>
        parameter.ToLowerInvariant() is "chain" or "chain:int" or "name" or "lifting";

    private static bool IsOurs(RouteEndpoint endpoint) =>
        endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET") == true
        && endpoint.Metadata.GetMetadata<MethodInfo>()?.DeclaringType?.Assembly == typeof(Program).Assembly;

    [GeneratedRegex(@"\{([^}]+)\}")]
    private static partial Regex Parameter();
}
