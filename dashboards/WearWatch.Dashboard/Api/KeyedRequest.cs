using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Dashboard.Kit.Answers;

namespace WearWatch.Dashboard.Api;

/// <summary>What a request tells: its key and its body, or the problem to answer with.</summary>
/// <param name="Key">The Idempotency-Key.</param>
/// <param name="Body">The body; null when there is a problem.</param>
/// <param name="Problem">What to answer when it cannot be read.</param>
internal sealed record KeyedRequest<T>(string Key, T? Body, IResult? Problem)
    where T : class
{
    /// <summary>A longer key is none.</summary>
    public const int LongestKey = 200;

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
        if (!request.HasJsonContentType() || !IsUtf8(request)) return (null, Problems.MediaType("application/json"));
        using var told = new MemoryStream();
        await request.Body.CopyToAsync(told, ct);
        var text = told.GetBuffer().AsSpan(0, (int)told.Length);
        // No file and no PostgreSQL keeps a text with NUL in it.
        if (text.IndexOf("\\u0000"u8) >= 0) return (null, Problems.BadRequest($"A text holds no NUL character."));
        try
        {
            return JsonSerializer.Deserialize(text, shape) is { } body
                ? (body, null)
                : (null, Problems.BadRequest($"The body is null."));
        }
        catch (JsonException error)
        {
            return (null, Problems.BadRequest($"{error.Path ?? "$"}: {error.Message}"));
        }
    }

    private static bool IsUtf8(HttpRequest request) =>
        request.GetTypedHeaders().ContentType?.Charset is not { HasValue: true } charset
            || charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase);

    /// <summary>The key of a request; null when it has none that can be used.</summary>
    public static string? KeyOf(HttpRequest request) =>
        request.Headers["Idempotency-Key"].ToString() is { Length: > 0 and <= LongestKey } key ? key : null;

    /// <summary>The answer to a write without key.</summary>
    public static IResult NoKey() =>
        Problems.Of(
            "no_key", $"The request has no key",
            $"A write carries an Idempotency-Key header of 1 to {LongestKey} characters: sent again, it changes nothing.");
}
