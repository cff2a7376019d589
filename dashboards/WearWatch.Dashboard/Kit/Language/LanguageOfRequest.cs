using Microsoft.AspNetCore.Localization;
using WearWatch.Dashboard.Kit.People;

namespace WearWatch.Dashboard.Kit.Language;

/// <summary>
/// The language of a request: the one that the signed-in person chose, on whatever device; else the one that was chosen in this
/// browser; else the one that the browser or the program asks for; else English.
/// </summary>
internal sealed class LanguageOfRequest : IRequestCultureProvider
{
    /// <summary>The cookie in which a browser keeps the language that was chosen in it while nobody was signed in.</summary>
    public const string Cookie = "language";

    /// <inheritdoc/>
    public Task<ProviderCultureResult?> DetermineProviderCultureResult(HttpContext httpContext) =>
        Task.FromResult<ProviderCultureResult?>(new ProviderCultureResult(Of(httpContext).Code));

    /// <summary>How the framework is told: every language, by this rule alone.</summary>
    public static RequestLocalizationOptions Options() => new()
    {
        DefaultRequestCulture = new RequestCulture(Tongue.English.Culture),
        SupportedCultures = [.. Tongue.All.Append(Tongue.Pseudo).Select(l => l.Culture)],
        SupportedUICultures = [.. Tongue.All.Append(Tongue.Pseudo).Select(l => l.Culture)],
        RequestCultureProviders = [new LanguageOfRequest()],
    };

    private static Tongue Of(HttpContext http) => Tongue.Of(http.User.Language())
        ?? Tongue.Of(http.Request.Cookies[Cookie])
        ?? Asked(http.Request)
        ?? Tongue.English;

    /// <summary>The one that a browser or a program likes best of those that are there (RFC 9110, Accept-Language).</summary>
    private static Tongue? Asked(HttpRequest request) => request.GetTypedHeaders().AcceptLanguage
        .Where(asked => asked.Quality is not 0).OrderByDescending(asked => asked.Quality ?? 1)
        .Select(asked => Tongue.Of(asked.Value.Value)).FirstOrDefault(known => known is not null);
}
