using System.Diagnostics.Metrics;
using System.Text.Json;
using System.Text.RegularExpressions;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Tests.Commands;

/// <summary>The board and the rules over the program's own figures ask only for what it tells, and for all of it.</summary>
/// <remarks>
/// Names in PromQL by "Prometheus and OpenMetrics Compatibility" of OpenTelemetry (from memory): dots become underscores, the
/// unit stands at the end, a sum that only rises ends in <c>_total</c>. The rules passed promtool 2.42 when they were written.
/// </remarks>
public sealed partial class WatchBoardTests
{
    private static readonly string Kept = Path.Combine(AppContext.BaseDirectory, "boards");

    // Told by ASP.NET Core (semantic conventions of HTTP metrics).
    private static readonly string[] others = ["http_server_request_duration_seconds"];

    private static readonly string[] severities = ["critical", "warning"];
    private static readonly string[] texts = ["summary", "description"];

    private static readonly string[] labels =
        ["le", "http_response_status_code", .. new[] { Meters.Outcome, Meters.JobName, Meters.CheckName, Meters.ErrorType }
            .Select(name => name.Replace('.', '_'))];

    [Fact]
    public void Every_question_is_about_what_the_program_tells_and_each_instrument_is_on_the_board()
    {
        var told = InstrumentNames();
        Assert.True(told.Count >= 5, string.Join(", ", told));
        var onBoard = Questions("watch.json", "expr").SelectMany(NamesIn).ToHashSet();
        Assert.Equal(told.Concat(others).Order(), onBoard.Order());
        Assert.Subset(onBoard, Questions("alerts.json", "expr").SelectMany(NamesIn).ToHashSet());
    }

    [Fact]
    public void Every_label_is_one_that_is_told()
    {
        var used = Questions("watch.json", "expr").Concat(Questions("alerts.json", "expr")).ToList();
        Assert.All(used.SelectMany(q => Matched().Matches(q).Select(m => m.Groups[1].Value)), l => Assert.Contains(l, labels));
        Assert.All(used.SelectMany(q => Grouped().Matches(q).Select(m => m.Groups[1].Value)), l => Assert.Contains(l, labels));
    }

    [Fact]
    public void Every_rule_says_what_it_means_and_what_to_do()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Kept, "alerts.json")));
        var rules = file.RootElement.GetProperty("groups")[0].GetProperty("rules").EnumerateArray().ToList();
        Assert.Equal(rules.Count, rules.Select(r => r.GetProperty("alert").GetString()).Distinct().Count());
        Assert.All(rules, rule =>
        {
            Assert.Matches(@"^\d+m$", rule.GetProperty("for").GetString());
            Assert.Contains(rule.GetProperty("labels").GetProperty("severity").GetString(), severities);
            foreach (var text in texts)
                Assert.EndsWith(".", rule.GetProperty("annotations").GetProperty(text).GetString(), StringComparison.Ordinal);
        });
    }

    private static List<string> InstrumentNames()
    {
        List<string> names = [];
        using var listener = new MeterListener
        {
            InstrumentPublished = (instrument, _) =>
            {
                if (instrument.Meter.Name == Meters.Name) names.Add(NameOf(instrument));
            },
        };
        Assert.NotNull(Meters.Messages); // they are made when one is asked for
        listener.Start();
        return names;
    }

    private static string NameOf(Instrument instrument) => instrument.Name.Replace('.', '_')
        + (instrument.Unit == "s" ? "_seconds" : "") + (instrument is Counter<long> ? "_total" : "");

    private static List<string> Questions(string file, string property)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(Kept, file)));
        return [.. Walk(json.RootElement, property)];
    }

    private static IEnumerable<string> Walk(JsonElement element, string property) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => p.Name == property
            ? [p.Value.GetString()!]
            : Walk(p.Value, property)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(e => Walk(e, property)),
        _ => [],
    };

    private static IEnumerable<string> NamesIn(string question) =>
        Series().Matches(question).Select(m => Part().Replace(m.Value, "")).Where(name => !labels.Contains(name));

    [GeneratedRegex(@"\b(?:wearwatch|http_server)_\w+")]
    private static partial Regex Series();

    [GeneratedRegex("_(?:bucket|sum|count)$")]
    private static partial Regex Part();

    [GeneratedRegex(@"[{,]\s*(\w+)(?:=|!=|=~|!~)")]
    private static partial Regex Matched();

    [GeneratedRegex(@"by \((\w+)\)")]
    private static partial Regex Grouped();
}
