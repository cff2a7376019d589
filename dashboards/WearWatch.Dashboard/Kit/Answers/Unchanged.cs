using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.Net.Http.Headers;

namespace WearWatch.Dashboard.Kit.Answers;

/// <summary>An answer that whoever has it already is not sent again: RFC 9110, 8.8.3 and 13.1.2.</summary>
internal static class Unchanged
{
    /// <summary>
    /// The answer with its tag, for a browser that keeps it and asks; 304 without a body where the caller named the same tag.
    /// </summary>
    /// <param name="http">The request.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="lasting">What of it makes it another one: the answer without the moment at which it was made.</param>
    /// <param name="shape">How it is written.</param>
    public static IResult Or<T>(HttpContext http, T answer, T lasting, JsonTypeInfo<T> shape)
    {
        http.Response.Headers.CacheControl = "private, no-cache";
        return IsKnown(http, JsonSerializer.SerializeToUtf8Bytes(lasting, shape))
            ? Results.StatusCode(StatusCodes.Status304NotModified)
            : Results.Ok(answer);
    }

    /// <summary>Whether the caller names the tag of an answer, and so has it already; sets the answer's tag.</summary>
    /// <param name="http">The request.</param>
    /// <param name="lasting">The answer, or what of it makes it another one.</param>
    public static bool IsKnown(HttpContext http, ReadOnlySpan<byte> lasting)
    {
        // Weak: it is packed on its way, so two that are equal are not the same to the byte.
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(lasting))}\"", isWeak: true);
        http.Response.GetTypedHeaders().ETag = tag;
        return http.Request.GetTypedHeaders().IfNoneMatch.Any(has => has.Compare(tag, useStrongComparison: false));
    }
}
