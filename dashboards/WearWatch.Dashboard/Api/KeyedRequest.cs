using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace WearWatch.Dashboard.Api;

/// <summary>What a request tells: its key and its body, or the problem to answer with.</summary>
/// <param name="Key">The Idempotency-Key.</param>
/// <param name="Body">The body; null when there is a problem.</param>
/// <param name="Problem">What to answer when it cannot be read.</param>
internal sealed record KeyedRequest<T>(string Key, T? Body, IResult? Problem)
    where T : class
{
    private const int LongestKey = 200;

    /// <summary>Reads a request.</summary>
    public static async Task<KeyedRequest<T>> ReadAsync(HttpRequest request, JsonTypeInfo<T> shape, CancellationToken ct)
    {
        if (KeyOf(request) is not { } key) return new("", null, NoKey());
        var (body, problem) = await BodyAsync(request, shape, ct);
        return new(key, body, problem);
    }

    /// <summary>Reads the body of a request that changes nothing and so needs no key; or the problem to answer with.</summary>
    public static async Task<(T? Body, IResult? Problem)> BodyAsync(
        HttpRequest request, JsonTypeInfo<T> shape, CancellationToken ct)
    {
        if (!request.HasJsonContentType())
            return (null, Results.Problem(statusCode: StatusCodes.Status415UnsupportedMediaType, title: "Send application/json"));
        try
        {
            return await request.ReadFromJsonAsync(shape, ct) is { } body
                ? (body, null)
                : (null, Problems.BadRequest("The body is null."));
        }
        catch (JsonException error)
        {
            return (null, Problems.BadRequest($"{error.Path ?? "$"}: {error.Message}"));
        }
    }

    /// <summary>The key of a request; null when it has none that can be used.</summary>
    public static string? KeyOf(HttpRequest request) =>
        request.Headers["Idempotency-Key"].ToString() is { Length: > 0 and <= LongestKey } key ? key : null;

    /// <summary>The answer to a write without key.</summary>
    public static IResult NoKey() =>
        Problems.BadRequest(
            $"A write carries an Idempotency-Key header of 1 to {LongestKey} characters: sent again, it changes nothing.");
}
