using System.Text.Json;
using System.Text.RegularExpressions;
using WearWatch.Storage.Series;
using WearWatch.Worker.Commands;

namespace WearWatch.Worker.Tests.Commands;

/// <summary>
/// The ready-made boards ask only for what is written, and all of it. SeriesBoardTests asks a real server the same questions.
/// </summary>
public sealed partial class BoardsTests
{
    private static readonly string Kept = Path.Combine(AppContext.BaseDirectory, "boards");

    [Fact]
    public async Task What_the_command_writes_is_what_lies_ready()
    {
        var folder = Directory.CreateTempSubdirectory("wear-boards");
        using var output = new StringWriter();
        Assert.Equal(ExitCode.Done, await CommandLine.RunAsync(["boards", folder.FullName], output, output));
        Assert.Equal(Names(Kept), Names(folder.FullName));
        Assert.All(Names(Kept), name =>
            Assert.Equal(File.ReadAllText(Path.Combine(Kept, name!)), File.ReadAllText(Path.Combine(folder.FullName, name!))));
        folder.Delete(recursive: true);
    }

    [Fact]
    public void The_written_schema_is_the_one_of_the_program()
    {
        var documentation = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "units-and-formats.md"));
        var section = documentation[documentation.IndexOf("\n## Time series", StringComparison.Ordinal)..];
        section = section[..section.IndexOf("\n## ", 1, StringComparison.Ordinal)];
        Assert.Equal(SeriesSchema.Measurements.Values.Select(m => m.Measurement).Order(), TableKey().Matches(section)
            .Select(m => m.Groups[1].Value).Order());
        Assert.All(SeriesSchema.Tags.Append(SeriesSchema.Field),
            name => Assert.Contains($"`{name}`", section, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("plant.json")]
    [InlineData("chain.json")]
    public void A_board_asks_for_every_measurement_and_for_nothing_that_is_not_written(string name)
    {
        using var board = JsonDocument.Parse(File.ReadAllText(Path.Combine(Kept, name)));
        var queries = board.RootElement.GetProperty("panels").EnumerateArray()
            .SelectMany(p => p.GetProperty("targets").EnumerateArray()).Select(t => t.GetProperty("query").GetString()!).ToList();
        var written = SeriesSchema.Measurements.Values.Select(m => m.Measurement).ToHashSet();
        Assert.Equal(written, queries.Select(q => From().Match(q).Groups[1].Value).ToHashSet());
        var known = written.Concat(SeriesSchema.Tags).Append(SeriesSchema.Field).ToHashSet();
        Assert.All(queries.SelectMany(q => Quoted().Matches(q).Select(m => m.Groups[1].Value)),
            word => Assert.Contains(word, known));

        // What a question leaves open is either the tool's own word or a choice that the board offers.
        var choices = board.RootElement.GetProperty("templating").GetProperty("list").EnumerateArray()
            .Select(v => "$" + v.GetProperty("name").GetString());
        string[] open = ["$timeFilter", "$__interval", .. choices];
        Assert.All(queries.SelectMany(q => Open().Matches(q).Select(m => m.Value)), word => Assert.Contains(word, open));
        var places = board.RootElement.GetProperty("panels").EnumerateArray().Select(p => p.GetProperty("gridPos").ToString())
            .ToList();
        Assert.Equal(places.Count, places.Distinct().Count());
    }

    private static IEnumerable<string?> Names(string folder) => Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order();

    [GeneratedRegex(@"^\| `(\w+)`", RegexOptions.Multiline)]
    private static partial Regex TableKey();

    [GeneratedRegex(@" FROM ""(\w+)""")]
    private static partial Regex From();

    [GeneratedRegex(@"""(\w+)""")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\$\w*[A-Za-z]\w*")]
    private static partial Regex Open();
}
