using InfluxDB.Client;
using InfluxDB.Client.Api.Domain;
using InfluxDB.Client.Core.Exceptions;

namespace WearWatch.Storage.Series;

/// <summary>
/// Writes lines to InfluxDB, one request a call. Nothing is kept or tried again here: rows wait in the plant's memory.
/// </summary>
public sealed class SeriesWriter : IDisposable
{
    /// <summary>Lines in one request, at most.</summary>
    public const int MostLines = 5_000;

    private readonly HttpClient http;
    private readonly InfluxDBClient client;
    private readonly WriteApiAsync writing;
    private readonly string bucket;
    private readonly string organisation;

    public SeriesWriter(SeriesAddress address)
    {
        // The client insists on an organisation and a token, also where the server knows neither.
        (bucket, organisation) = (address.Bucket, address.Organisation.Length > 0 ? address.Organisation : "-");
        http = new HttpClient(address.IsVersion1 ? new Version1Writing() : new SocketsHttpHandler());
        client = new InfluxDBClient(new InfluxDBClientOptions(address.Url.ToString().TrimEnd('/'))
        {
            Org = organisation,
            Bucket = bucket,
            Token = address.Token.Length > 0 ? address.Token : "-",
            HttpClient = http,
        });
        writing = client.GetWriteApiAsync();
    }

    /// <summary>Sends lines; the same lines sent again change nothing.</summary>
    public async Task<SeriesAnswer> WriteAsync(List<string> lines, CancellationToken ct)
    {
        try
        {
            await writing.WriteRecordsAsync(lines, WritePrecision.Ns, bucket, organisation, ct);
            return new SeriesAnswer.Stored();
        }
        catch (HttpException e)
        {
            ct.ThrowIfCancellationRequested(); // a stop looks like a failed request
            return e.Status switch
            {
                401 or 403 or 404 => new SeriesAnswer.ShutOut(e.Message),
                400 or 413 or 422 => new SeriesAnswer.Wrong(e.Message),
                _ => new SeriesAnswer.Away(e.Message),
            };
        }
    }

    public void Dispose()
    {
        client.Dispose();
        http.Dispose();
    }
}
