using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using WearWatch.Plant.Bench;
using WearWatch.Tests.Chains;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>
/// Real cases of the trade (tests/data/trade/real_cases.csv): a machine, what a fitter asks, and the answer by public formulas
/// and tables, each with its source. The bench answers; pages, command line and HTTP API ask the same bench.
/// </summary>
public sealed partial class RealCaseTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Cases = TradeTable.Read("real_cases.csv");

    public static TheoryData<string> Ids => [.. Cases.Select(row => row["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_real_case_has_the_answer_of_the_trade(string id)
    {
        var row = Assert.Single(Cases, row => row["id"] == id);
        var answer = Answer(row["question"], row["asked"]);
        foreach (var expected in row["expected"].Split(';', StringSplitOptions.TrimEntries))
        {
            var (path, value) = (expected.Split('=')[0], expected[(expected.IndexOf('=', StringComparison.Ordinal) + 1)..]);
            var said = Said(answer, path);
            if (ATolerance().Match(value) is { Success: true } match)
            {
                Assert.True(
                    Math.Abs(Number(said) - Number(match.Groups[1].Value)) <= Number(match.Groups[2].Value),
                    $"{id} {row["machine"]}: {path} is {said}, expected {value}");
            }
            else
            {
                Assert.Contains(value, said, StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    [Fact]
    public void Every_case_names_its_source_and_no_two_are_alike()
    {
        Assert.All(Cases, row => Assert.Matches(@"docs/references\.md \[\d+\]|geometry|common practice", row["source"]));
        Assert.Equal(Cases.Count, Cases.Select(row => row["question"] + row["asked"]).Distinct().Count());
        Assert.InRange(Cases.Count, 60, 1000);
        Assert.InRange(Cases.Select(row => row["family"]).Distinct().Count(), 7, 100);
    }

    private static JsonNode Answer(string question, string asked) => question switch
    {
        "gauge" => Node(GaugeBench.Answer(Bench.Ask(asked)), GaugeJson.Of, BenchJson.Default.GaugeJson),
        "limit" => Node(LimitBench.Answer(Bench.Ask(asked)), LimitJson.Of, BenchJson.Default.LimitJson),
        "drive" => Node(DriveBench.Answer(Bench.Ask(asked)), DriveJson.Of, BenchJson.Default.DriveJson),
        "oil" => Node(OilBench.Answer(Bench.Ask(asked)), ChainOilJson.Of, BenchJson.Default.ChainOilJson),
        _ => throw new ArgumentOutOfRangeException(nameof(question), question, "No such question."),
    };

    private static JsonNode Node<T, TJson>(
        BenchAnswer<T> answer, Func<T, TJson> wire, JsonTypeInfo<TJson> type) => answer switch
        {
            BenchAnswer<T>.Answered answered => JsonSerializer.SerializeToNode(wire(answered.Result), type)!,
            BenchAnswer<T>.Refused refused => new JsonObject(refused.Refusals.DistinctBy(r => r.Field)
                .Select(r => KeyValuePair.Create("refused_" + r.Field, (JsonNode?)JsonValue.Create(r.Reason.ToString())))),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static string Said(JsonNode answer, string path)
    {
        JsonNode? at = answer;
        foreach (var name in path.Split('.'))
            at = int.TryParse(name, CultureInfo.InvariantCulture, out var index) ? at?[index] : at?[name];
        return at is JsonArray ? at.ToJsonString() : at?.ToString() ?? "nothing";
    }

    private static double Number(string text) =>
        double.TryParse(text, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;

    [GeneratedRegex(@"^(-?[\d.]+)~([\d.]+)$")]
    private static partial Regex ATolerance();
}
