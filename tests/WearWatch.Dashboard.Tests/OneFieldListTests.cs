using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Tests.Architecture;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Tests;

/// <summary>The columns of the files are the one list of what an event and a reading tell.</summary>
public sealed partial class OneFieldListTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Theory]
    [InlineData("EventEntryJson")]
    [InlineData("EventJson")]
    public async Task Every_fact_of_an_event_is_told_to_the_api_and_by_it(string schema) =>
        Assert.Empty(EventColumns.All.Select(c => c.Name).Except(await FieldsOfAsync(schema)));

    [Theory]
    [InlineData("ReadingEntryJson")]
    [InlineData("ReadingJson")]
    public async Task Every_fact_of_a_reading_is_told_to_the_api_and_by_it(string schema) =>
        Assert.Empty(ReadingColumns.All.Select(c => c.Name).Except(await FieldsOfAsync(schema)));

    [Fact]
    public void The_history_has_every_column_with_its_meaning()
    {
        var (events, readings) = (host.Get<HistoryTables>().Of("events")!, host.Get<HistoryTables>().Of("readings")!);
        Assert.All(EventColumns.All, c => Assert.Contains(new HistoryColumn(c.Name, c.Kind, $"{c.Meaning}"), events.Columns));
        Assert.All(ReadingColumns.All, c => Assert.Contains(new HistoryColumn(c.Name, c.Kind, $"{c.Meaning}"), readings.Columns));
        Assert.DoesNotContain("", EventColumns.All.Select(c => c.Meaning).Concat(ReadingColumns.All.Select(c => c.Meaning)));
    }

    /// <summary>A load is laid on a chain at a bench, not where it runs: the phone does not ask for it.</summary>
    [Fact]
    public void The_phone_tells_every_fact_of_a_reading_but_the_load_and_every_fact_of_an_event()
    {
        Assert.Equal(["load_n"], ReadingColumns.All.Select(c => c.Name).Except(PhoneTells("measure-form.js")));
        Assert.Empty(EventColumns.All.Select(c => c.Name).Except(PhoneTells("do-entry.js")));
    }

    /// <summary>The names of what a script of the phone puts into an object, such as <c>strand: read.strand</c>.</summary>
    private static IEnumerable<string> PhoneTells(string script) => Name()
        .Matches(File.ReadAllText(Path.Combine(SourceTree.Root, "dashboards/WearWatch.Dashboard/wwwroot/floor", script)))
        .Select(m => m.Groups[1].Value);

    [GeneratedRegex(@"\b([a-z_]+)(?:: |,| \})")]
    private static partial Regex Name();

    private async Task<IReadOnlyList<string>> FieldsOfAsync(string schema)
    {
        using var client = host.CreateClient();
        var document = await client.GetFromJsonAsync<JsonElement>("/openapi/v1.json", TestContext.Current.CancellationToken);
        var properties = document.GetProperty("components").GetProperty("schemas").GetProperty(schema).GetProperty("properties");
        return [.. properties.EnumerateObject().Select(p => p.Name)];
    }
}
