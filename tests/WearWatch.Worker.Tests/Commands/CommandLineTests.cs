using System.Text.Json;
using WearWatch.Worker.Commands;

namespace WearWatch.Worker.Tests.Commands;

public sealed class CommandLineTests
{
    [Fact]
    public async Task Gauge_tells_elongation_and_uncertainty_as_JSON()
    {
        var (code, output, _) = await RunAsync("gauge --pitch-mm 25.4 --pitches 40 --length-mm 1028.7 --tool tape --json");
        Assert.Equal(ExitCode.Done, code);
        using var json = JsonDocument.Parse(output);
        Assert.Equal(1.25, json.RootElement.GetProperty("elongation_pct").GetDouble(), 12); // (1028.7 - 1016) / 1016
        var standard = json.RootElement.GetProperty("standard_uncertainty_pct").GetDouble();
        Assert.Equal(2 * standard, json.RootElement.GetProperty("expanded_uncertainty_pct").GetDouble(), 12);
        Assert.InRange(standard, 0.049, 0.2); // no better than 0.5 mm on 1016 mm
    }

    [Fact]
    public async Task Gauge_takes_inches_with_a_fraction()
    {
        var (_, output, _) = await RunAsync("gauge", "--pitch-mm", "25.4", "--pitches", "40", "--length-in", "40 1/2", "--json");
        // 40.5 in over 40 in
        Assert.Equal(1.25, JsonDocument.Parse(output).RootElement.GetProperty("elongation_pct").GetDouble(), 12);
    }

    [Fact]
    public async Task Limit_tells_the_rule_of_the_largest_sprocket()
    {
        var (code, output, _) = await RunAsync("limit --teeth 17,75 --json");
        using var json = JsonDocument.Parse(output);
        Assert.Equal((ExitCode.Done, "sprocket_teeth"), (code, json.RootElement.GetProperty("reason").GetString()));
        Assert.Equal(200.0 / 75, json.RootElement.GetProperty("limit_pct").GetDouble(), 12); // docs/references.md [8]
        Assert.Contains("docs/references.md [8]", json.RootElement.GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("limit --teeth 19,38 --fixed-centres --json", "fixed_centres")]
    [InlineData("limit --teeth 19,38 --parallel --json", "parallel_strands")]
    [InlineData("limit --teeth 19,38 --json", "general")]
    [InlineData("limit --family leaf --json", "lifting")]
    public async Task Limit_tells_which_reason_governs(string line, string reason) =>
        Assert.Equal(reason, JsonDocument.Parse((await RunAsync(line)).Output).RootElement.GetProperty("reason").GetString());

    // A hoist maker's published row 5x15 (docs/references.md [74]); dm = (4.1 + 4.9)/2 is its least, 4.5 mm.
    [Fact]
    public async Task Links_are_gauged_by_three_measures_and_the_worst_heads_the_answer()
    {
        var (code, output, _) = await RunAsync(
            "gauge", "--pitch-mm", "15", "--family", "round_link", "--link-diameter-new", "5", "--one-link", "15.2",
            "--over-links", "166.5",
            "--d1", "4.1", "--d2", "4.9", "--one-link-limit", "15.7", "--over-links-limit", "170.6", "--diameter-limit",
            "4.5", "--table-source", "hoist manual");
        Assert.Equal(0, code);
        Assert.StartsWith("take out of use: Discard limit reached: mean of two diameters 4.50 mm", output,
            StringComparison.Ordinal);
        Assert.Contains("Caution:", output, StringComparison.Ordinal);
        Assert.Contains("29 % of the way to 15.70 mm, its maker's table: hoist manual (as entered)", output,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gauge --pitch-mm 25.4 --pitches 0 --length-mm 1020", "pitches: ")]
    [InlineData("gauge --pitch-mm 25.4 --pitches -4 --length-mm 1020", "pitches: ")]
    [InlineData("gauge --pitch-mm 0 --pitches 40 --length-mm 1020", "pitch_mm: ")]
    [InlineData("gauge --pitch-mm 25.4 --pitches 40 --length-mm 1200", "length: ")]
    public async Task What_is_refused_gives_1_and_its_reason_on_standard_error(string line, string reason)
    {
        var (code, output, error) = await RunAsync(line);
        Assert.Equal((ExitCode.Refused, ""), (code, output));
        Assert.StartsWith(reason, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("measure")]
    [InlineData("gauge --pitch-mm 25.4")]
    [InlineData("gauge --pitch-mm long --pitches 40 --length-mm 1020")]
    [InlineData("gauge --pitch-mm 25.4 --pitches 40 --length-mm 1020 --tool ruler")]
    [InlineData("limit --teeth few")]
    [InlineData("forecast /no/such/folder --out x.csv")]
    [InlineData("forecast .")]
    [InlineData("backtest . --out x.csv")]
    [InlineData("import /no/such/folder")]
    public async Task What_is_not_understood_gives_2_and_says_so_on_standard_error(string line)
    {
        var (code, output, error) = await RunAsync(line);
        Assert.Equal((ExitCode.WrongUsage, ""), (code, output));
        Assert.NotEmpty(error);
    }

    [Theory]
    [InlineData("")]
    [InlineData("gauge")]
    [InlineData("limit")]
    [InlineData("forecast")]
    [InlineData("backtest")]
    [InlineData("import")]
    [InlineData("export")]
    [InlineData("plan")]
    [InlineData("plan propose")]
    [InlineData("plan show")]
    [InlineData("plan save")]
    [InlineData("serve")]
    [InlineData("demo")]
    [InlineData("boards")]
    public async Task Help_describes_every_command_with_an_example(string command)
    {
        var (code, output, _) = await RunAsync($"{command} --help");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Description:", output, StringComparison.Ordinal);
        Assert.Contains(
            $"  wearwatch {command}", output[output.IndexOf("Examples:", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.DoesNotContain("WearWatch.Worker", output, StringComparison.Ordinal);
    }

    internal static Task<(int Code, string Output, string Error)> RunAsync(string line) =>
        RunAsync(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    internal static async Task<(int Code, string Output, string Error)> RunAsync(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.RunAsync(words, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
