using System.Globalization;
using System.Net.Http.Headers;
using System.Text.Json;

namespace WearWatch.Storage.Series;

/// <summary>Reads time series by InfluxQL: the one way of reading that InfluxDB 1, 2 and 3 share.</summary>
public sealed class SeriesReader : IDisposable
{
    private readonly HttpClient http = new() { Timeout = TimeSpan.FromSeconds(30) };
    private readonly SeriesAddress address;

    public SeriesReader(SeriesAddress address)
    {
        this.address = address;
        if (address.Token.Length == 0) return;
        http.DefaultRequestHeaders.Authorization =
            address.IsVersion1 ? Version1Writing.Basic(address.Token) : new AuthenticationHeaderValue("Token", address.Token);
    }

    /// <summary>Asks a question.</summary>
    /// <param name="query">InfluxQL, with <c>$name</c> where a value belongs.</param>
    /// <param name="values">The values.</param>
    /// <param name="ct">Stops it.</param>
    /// <exception cref="SeriesQueryException">The server does not understand or has no such database.</exception>
    /// <exception cref="HttpRequestException">The server is away.</exception>
    public async Task<IReadOnlyList<Series>> QueryAsync(
        string query, IReadOnlyDictionary<string, object>? values = null, CancellationToken ct = default)
    {
        var bucket = address.Bucket.Split('/', 2);
        var asked = new Dictionary<string, string> { ["db"] = bucket[0], ["epoch"] = "ns", ["q"] = query };
        if (bucket.Length == 2) asked["rp"] = bucket[1];
        if (values is not null) asked["params"] = JsonSerializer.Serialize(values, JsonSerializerOptions.Default);
        var words = string.Join('&', asked.Select(a => $"{a.Key}={Uri.EscapeDataString(a.Value)}"));
        using var response =
            await http.GetAsync(new Uri(address.Url, $"query?{words}"), HttpCompletionOption.ResponseHeadersRead, ct);
        if (response.StatusCode is System.Net.HttpStatusCode.Unauthorized or System.Net.HttpStatusCode.Forbidden
            or System.Net.HttpStatusCode.NotFound
            || (int)response.StatusCode >= 500)
            throw new HttpRequestException(
                $"The store of time series answers {(int)response.StatusCode}.", null, response.StatusCode);
        using var document = await JsonDocument.ParseAsync(await response.Content.ReadAsStreamAsync(ct), cancellationToken: ct);
        return [.. Read(document.RootElement)];
    }

    public void Dispose() => http.Dispose();

    private static IEnumerable<Series> Read(JsonElement root)
    {
        ThrowOnError(root);
        foreach (var result in root.GetProperty("results").EnumerateArray())
        {
            ThrowOnError(result); // an error may come with status 200
            if (!result.TryGetProperty("series", out var all)) continue; // no rows
            foreach (var one in all.EnumerateArray()) yield return Read(one, one.GetProperty("columns"));
        }
    }

    private static Series Read(JsonElement one, JsonElement columns) => new(
        one.TryGetProperty("name", out var name) ? name.GetString()! : "",
        one.TryGetProperty("tags", out var tags) ? tags.EnumerateObject()
            .ToDictionary(t => t.Name, t => t.Value.GetString() ?? "") : [],
        [.. columns.EnumerateArray().Select(c => c.GetString()!)],
        one.TryGetProperty("values", out var rows)
            ? [.. rows.EnumerateArray().Select(r => r.EnumerateArray().Select(Value).ToList())]
            : []);

    /// <summary>A number is read as its text tells it: nanoseconds need all 19 digits.</summary>
    private static object? Value(JsonElement cell) => cell.ValueKind switch
    {
        JsonValueKind.Number when cell.TryGetInt64(out var whole) => whole,
        JsonValueKind.Number => cell.GetDouble(),
        JsonValueKind.String => cell.GetString(),
        JsonValueKind.True or JsonValueKind.False => cell.GetBoolean(),
        _ => null,
    };

    private static void ThrowOnError(JsonElement element)
    {
        if (element.TryGetProperty("error", out var error)) throw new SeriesQueryException(error.GetString() ?? "unknown error");
    }

    /// <summary>Rows that belong together.</summary>
    /// <param name="Measurement">The measurement.</param>
    /// <param name="Tags">The tags by which they were grouped.</param>
    /// <param name="Columns">Names of the columns; the first is <c>time</c>, nanoseconds since 1970.</param>
    /// <param name="Rows">Whole numbers, numbers, texts; null where an aggregate is empty.</param>
    public sealed record Series(
        string Measurement, IReadOnlyDictionary<string, string> Tags, IReadOnlyList<string> Columns,
        IReadOnlyList<IReadOnlyList<object?>> Rows)
    {
        /// <summary>The number in a row and column; null where it is empty.</summary>
        public double? Number(int row, int column) =>
            Rows[row][column] is { } cell ? Convert.ToDouble(cell, CultureInfo.InvariantCulture) : null;
    }
}
