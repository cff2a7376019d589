using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Infrastructure;
using Microsoft.AspNetCore.Authorization.Policy;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Answers a program that may not do what it asks by RFC 9457, never by a page: the entry queue of a phone keeps what it has
/// then.
/// </summary>
internal sealed class AccessAnswers : IAuthorizationMiddlewareResultHandler
{
    private readonly AuthorizationMiddlewareResultHandler pages = new();

    /// <summary>Whether a program asks: it gets no page and no redirect.</summary>
    public static bool IsForProgram(HttpContext http) =>
        http.Request.Path.StartsWithSegments("/api") || http.Request.Path.StartsWithSegments("/openapi")
            || KeySession.TokenOf(http.Request) is not null;

    /// <summary>A problem with a word by which programs tell it from others.</summary>
    public static IResult Problem(int status, string title, string detail, string code) =>
        Results.Problem(
            statusCode: status, title: title, detail: detail, extensions: new Dictionary<string, object?> { ["code"] = code });

    public Task HandleAsync(
        RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult)
    {
        if (authorizeResult.Succeeded || !IsForProgram(context)) return pages.HandleAsync(next, context, policy, authorizeResult);
        return authorizeResult.Challenged
            ? Unknown(context).ExecuteAsync(context)
            : Problem(403, "Not allowed", $"This needs the role {Roles(policy)}. Nothing was stored.", "missing_role")
            .ExecuteAsync(context);
    }

    private static IResult Unknown(HttpContext http)
    {
        http.Response.Headers.WWWAuthenticate = "Bearer";
        return Problem(
            401, "Not signed in",
            KeySession.TokenOf(http.Request) is null
                ? "Sign in, or send a key as Authorization: Bearer ww_... Nothing was stored."
                : "This key is not known here, or was withdrawn. Nothing was stored.",
            "not_signed_in");
    }

    private static string Roles(AuthorizationPolicy policy) =>
        string.Join(" or ", policy.Requirements.OfType<RolesAuthorizationRequirement>().SelectMany(r => r.AllowedRoles));
}
