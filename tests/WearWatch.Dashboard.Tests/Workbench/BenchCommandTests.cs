using System.Text.Json;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>The calculators on the command line.</summary>
public sealed class BenchCommandTests
{
    [Fact]
    public async Task Gauge_tells_the_elongation_with_its_uncertainty_as_json()
    {
        var (code, output, _) =
            await RunAsync("gauge", "--pitch-mm", "25.4", "--pitches", "40", "--length-mm", "1028.7", "--json");
        var gauge = JsonDocument.Parse(output).RootElement;
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(1.25, gauge.GetProperty("elongation_pct").GetDouble(), 1e-9);
        Assert.Equal(2 * gauge.GetProperty("standard_uncertainty_pct").GetDouble(), gauge.GetProperty("expanded_uncertainty_pct")
            .GetDouble(), 1e-12);
    }

    [Fact]
    public async Task Gauge_reads_inches_and_shows_its_budget()
    {
        var (code, output, _) = await RunAsync("gauge", "--type", "80-1", "--pitches", "24", "--length-in", "24 3/4");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Elongation 3.125 %", output, StringComparison.Ordinal);
        Assert.Contains("swap now", output, StringComparison.Ordinal);
        Assert.Contains("tolerance of a new chain", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauge_refuses_what_no_chain_has_until_it_is_confirmed()
    {
        string[] words = ["gauge", "--pitch-mm", "25.4", "--pitches", "40", "--length-mm", "528.7"];
        var (code, output, error) = await RunAsync(words);
        Assert.Equal((ExitCode.Refused, ""), (code, output));
        Assert.StartsWith("length: ", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, (await RunAsync([.. words, "--confirmed"])).Code);
    }

    [Theory]
    [InlineData("gauge --pitch-mm 25.4 --pitches 40")]
    [InlineData("gauge --pitches 40 --length-mm 1028.7")]
    [InlineData("gauge --pitch-mm 25.4 --pitches 40 --length-mm 1028.7 --tool ruler")]
    [InlineData("limit --teeth 3")]
    public async Task Wrong_usage_is_told_as_such(string line) =>
        Assert.Equal(ExitCode.WrongUsage, (await RunAsync(line.Split(' '))).Code);

    // Source: docs/references.md [8]: 200/75 = 2.67 %.
    [Fact]
    public async Task Limit_tells_the_rule_and_its_source()
    {
        var (_, output, _) = await RunAsync("limit", "--teeth", "17,75", "--json");
        var limit = JsonDocument.Parse(output).RootElement;
        Assert.Equal(200.0 / 75, limit.GetProperty("limit_pct").GetDouble(), 1e-12);
        Assert.Equal("sprocket_teeth", limit.GetProperty("reason").GetString());
        Assert.Contains("[8]", limit.GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drive_works_out_and_refuses_the_impossible()
    {
        var (code, output, _) = await RunAsync("drive", "--type", "16A-1", "--teeth", "19", "--driven-teeth", "57", "--rpm",
            "300", "--power", "12", "--centre", "1000");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("118 pitches (117.67", output, StringComparison.Ordinal);
        var (refused, _, error) = await RunAsync(
            "drive", "--type", "M112x160", "--teeth", "8", "--driven-teeth", "8", "--speed", "76 m/h", "--power", "400 hp",
            "--centre", "24000");
        Assert.Equal(ExitCode.Refused, refused);
        Assert.Contains("power: ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gauge")]
    [InlineData("limit")]
    [InlineData("drive")]
    public async Task Help_ends_with_examples_that_work(string command)
    {
        var help = (await RunAsync(command, "--help")).Output;
        var examples = help[help.IndexOf("Examples:", StringComparison.Ordinal)..].Split('\n').Select(l => l.Trim())
            .Where(l => l.StartsWith("wearwatch ", StringComparison.Ordinal)).ToList();
        Assert.True(examples.Count >= 3);
        foreach (var example in examples)
        {
            string[] words = [.. System.Text.RegularExpressions.Regex
                .Matches(example["wearwatch ".Length..], "\"([^\"]*)\"|(\\S+)").Select(m => m.Value.Trim('"'))];
            Assert.Equal(ExitCode.Done, (await RunAsync(words)).Code);
        }
    }

    private static async Task<(int Code, string Output, string Error)> RunAsync(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.RunAsync(words, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
