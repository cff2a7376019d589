using WearWatch.Storage.Series;

namespace WearWatch.Servers.Tests.Servers;

/// <summary>A real InfluxDB 1.6.7, of the Debian package influxdb, on free ports.</summary>
internal sealed class InfluxServer : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-influx");
    private readonly HttpClient http = new();
    private readonly ServerProcess server;

    public InfluxServer()
    {
        var port = FreePort.Find();
        Url = new Uri(FormattableString.Invariant($"http://127.0.0.1:{port}/"));
        var settings = Path.Combine(folder.FullName, "influxdb.conf");
        File.WriteAllText(settings, FormattableString.Invariant(
            $"""
            reporting-enabled = false
            bind-address = "127.0.0.1:{FreePort.Find()}"
            [meta]
              dir = "{folder.FullName}/meta"
            [data]
              dir = "{folder.FullName}/data"
              wal-dir = "{folder.FullName}/wal"
              query-log-enabled = false
            [monitor]
              store-enabled = false
            [http]
              bind-address = "127.0.0.1:{port}"
              log-enabled = false
            [logging]
              level = "warn"
              suppress-logo = true
            """) + "\n");
        server = new ServerProcess("InfluxDB", ["influxd", "run", "-config", settings], AnswersAsync);
    }

    public Uri Url { get; }

    /// <summary>A database of it, as its users set it.</summary>
    public SeriesAddress Address(string database = "wear") => new(Url, $"{database}/autogen", "", "", IsVersion1: true);

    /// <summary>Starts it and makes a database where it is missing.</summary>
    public async Task StartAsync(CancellationToken ct = default)
    {
        await server.StartAsync(ct);
        using var made =
            await http.PostAsync(new Uri(Url, "query"), new FormUrlEncodedContent([new("q", "CREATE DATABASE wear")]), ct);
        made.EnsureSuccessStatusCode();
    }

    /// <summary>Ends it as a power cut would.</summary>
    public Task KillAsync(CancellationToken ct = default) => server.KillAsync(ct);

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        http.Dispose();
        folder.Delete(recursive: true);
    }

    private async Task<bool> AnswersAsync(CancellationToken ct)
    {
        try
        {
            using var answer = await http.GetAsync(new Uri(Url, "ping"), ct);
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
