using Microsoft.AspNetCore.Mvc;

namespace WearWatch.Dashboard.Api;

/// <summary>How large a request may be: small by default, larger only where files are taken in.</summary>
internal static class RequestSize
{
    /// <summary>Bytes of a request that carries no file: a reading has some hundred.</summary>
    public const long Usual = 256 * 1024;

    /// <summary>What stands around a file in its request.</summary>
    private const long Around = 64 * 1024;

    /// <summary>Lets a request carry a file of so many bytes.</summary>
    public static TBuilder WithFileOf<TBuilder>(this TBuilder endpoint, long bytes)
        where TBuilder : IEndpointConventionBuilder => endpoint.WithMetadata(new RequestSizeLimitAttribute(bytes + Around));
}
