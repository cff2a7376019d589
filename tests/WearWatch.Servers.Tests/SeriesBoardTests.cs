using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Signals;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Series;
using WearWatch.Storage.Series.Boards;

namespace WearWatch.Servers.Tests;

/// <summary>Every question of the ready-made boards is asked of a real InfluxDB 1.6.7 over telemetry as it is sent on.</summary>
[Collection(nameof(OneAtATime))]
public sealed class SeriesBoardTests
{
    private const int Days = 3;

    private static readonly DateTimeOffset Start = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly ChainRow[] Chains = [new() { Name = "DR-05", Line = "Drying" }, new() { Name = "a b=(1)" }];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_picture_shows_what_was_sent_of_every_chain()
    {
        await using var influx = new InfluxServer();
        await influx.StartAsync(Ct);
        using var writer = new SeriesWriter(influx.Address());
        using var reader = new SeriesReader(influx.Address());
        Assert.IsType<SeriesAnswer.Stored>(
            await writer.WriteAsync([.. Rows().Select(row => SeriesSchema.Line(row, Chains[row.ChainId]))], Ct));

        using var board = JsonDocument.Parse(SeriesBoard.Files["plant.json"]);
        var shown = new Dictionary<string, IReadOnlyList<SeriesReader.Series>>();
        foreach (var panel in board.RootElement.GetProperty("panels").EnumerateArray())
            shown[panel.GetProperty("title").GetString()!] =
                await reader.QueryAsync(Filled(panel.GetProperty("targets")[0].GetProperty("query").GetString()!), null, Ct);

        Assert.All(shown, s => Assert.Equal(Chains.Select(c => c.Name).Order(StringComparer.Ordinal),
            s.Value.Select(v => v.Tags["chain"]).Order(StringComparer.Ordinal)));
        // What was sent, see Rows: 18 h a day; 2 pulses a second; the counter's first day has no day before it.
        Assert.All(shown["Running hours a day"], s => Assert.Equal([18.0, 18.0], Values(s)));
        Assert.All(shown["Speed pulses"], s => Assert.All(Values(s), v => Assert.Equal(2, v!.Value, 9)));
        Assert.All(shown["Oil a day"], s => Assert.All(Values(s), v => Assert.Equal(23 * 0.4, v!.Value, 9)));
        Assert.All(shown["Strokes without oil a day"], s => Assert.Equal([1.0, 1.0, 1.0], Values(s)));
        Assert.All(shown["Chain temperature"], s => Assert.Equal(Days * 24, Values(s).Count(v => v is >= 30 and < 54)));
        Assert.All(shown["Runs or stands"], s => Assert.Equal([0.0, 1.0], Values(s).OfType<double>().Distinct().Order()));
        Assert.All(shown["Measured length"], s => Assert.Equal([1021.3, 1021.4, 1021.5], Values(s)));
        Assert.All(shown["Rollers or links counted"], s => Assert.All(Values(s), v => Assert.Equal(200, v)));

        // One chain chosen by its name, as the tool writes it into the question: letters that mean something in a pattern are
        // escaped.
        var one = await reader.QueryAsync(Filled(
            BoardPicture.All[0].Query, Regex.Escape(Chains[1].Name).Replace("\\ ", " ", StringComparison.Ordinal)), null, Ct);
        Assert.Equal(Chains[1].Name, Assert.Single(one).Tags["chain"]);
        var choices = board.RootElement.GetProperty("templating").GetProperty("list").EnumerateArray()
            .ToDictionary(v => v.GetProperty("name").GetString()!, v => v.GetProperty("query").GetString()!);
        Assert.Equal(["Drying"], await ChoicesAsync(reader, choices["line"]));
        Assert.Equal(["DR-05", "a b=(1)"], await ChoicesAsync(reader, choices["chain"]));
    }

    private static async Task<IEnumerable<string>> ChoicesAsync(SeriesReader reader, string query) =>
        (await reader.QueryAsync(Filled(query), null, Ct)).SelectMany(s => s.Rows).Select(r => (string)r[1]!).Distinct()
            .Order(StringComparer.Ordinal);

    /// <summary>Fills in what the tool fills in.</summary>
    private static string Filled(string query, string chain = ".*") => query
        .Replace("$timeFilter", string.Create(CultureInfo.InvariantCulture,
            $"time >= '{Start:yyyy-MM-dd'T'HH:mm:ss'Z'}' AND time < '{Start.AddDays(Days):yyyy-MM-dd'T'HH:mm:ss'Z'}'"),
            StringComparison.Ordinal)
        .Replace("$__interval", "1h", StringComparison.Ordinal)
        .Replace("$chain", chain, StringComparison.Ordinal)
        .Replace("$line", ".*", StringComparison.Ordinal);

    private static List<double?> Values(SeriesReader.Series series) =>
        [.. Enumerable.Range(0, series.Rows.Count).Select(i => series.Number(i, 1))];

    /// <summary>
    /// Three days of a line that runs from 6 to 24 h; every hour each machine says something, the length once a day.
    /// </summary>
    private static IEnumerable<TelemetryRow> Rows()
    {
        for (var chain = 0; chain < Chains.Length; chain++)
        {
            for (var hour = 0; hour < Days * 24; hour++)
            {
                var (day, of) = (hour / 24, hour % 24);
                yield return Row(TelemetryKind.RunningCounter, 500 + 18 * day + Math.Max(0, of + 1 - 6));
                yield return Row(TelemetryKind.RunningSwitch, of < 6 ? 0 : 1);
                yield return Row(TelemetryKind.RunningPulses, 7200 * hour);
                yield return Row(TelemetryKind.Temperature, 30 + of);
                yield return Row(TelemetryKind.Passes, 200);
                yield return Row(TelemetryKind.Oiling, of == 12 ? 0 : 0.4);
                if (of == 8) yield return Row(TelemetryKind.Length, 1021.3 + day / 10.0);

                TelemetryRow Row(TelemetryKind kind, double value) =>
                    new()
                    {
                        MessageId = $"{kind} {hour}",
                        ChainId = chain,
                        Kind = kind,
                        At = Start.AddHours(hour),
                        Value = value,
                    };
            }
        }
    }
}
