using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Infrastructure;
using Microsoft.AspNetCore.Authorization.Policy;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Answers a program that may not do what it asks by RFC 9457, never by a page: the entry queue of a phone keeps what it has
/// then.
/// </summary>
internal sealed class AccessAnswers(SecurityLog log) : IAuthorizationMiddlewareResultHandler
{
    private readonly AuthorizationMiddlewareResultHandler pages = new();

    /// <summary>Whether a program asks: it gets no page and no redirect.</summary>
    public static bool IsForProgram(HttpContext http) => IsForProgram(http, http.Request.Path);

    /// <summary>Whether a program asked for an address, where another one is answered in its place.</summary>
    public static bool IsForProgram(HttpContext http, PathString asked) =>
        asked.StartsWithSegments("/api") || asked.StartsWithSegments("/openapi") || asked.StartsWithSegments("/asyncapi")
        || KeySession.TokenOf(http.Request) is not null;

    public async Task HandleAsync(
        RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult)
    {
        if (authorizeResult.Forbidden)
            await log.AddAsync(SecurityEventKind.NotAllowed, $"{context.Request.Method} {context.Request.Path}");
        if (authorizeResult.Succeeded || !IsForProgram(context))
        {
            await pages.HandleAsync(next, context, policy, authorizeResult);
            return;
        }

        var answer = authorizeResult.Challenged
            ? Unknown(context)
            : Problems.Of("missing_role", $"Not allowed", $"This needs one of the roles {Roles(policy)}. Nothing was stored.");
        await answer.ExecuteAsync(context);
    }

    private static IResult Unknown(HttpContext http)
    {
        http.Response.Headers.WWWAuthenticate = "Bearer";
        return Problems.Of(
            "not_signed_in", $"Not signed in",
            KeySession.TokenOf(http.Request) is null
                ? Phrase.Of($"Sign in, or send a key as Authorization: Bearer ww_... Nothing was stored.")
                : $"This key is not known here, or was withdrawn. Nothing was stored.");
    }

    private static Phrase Roles(AuthorizationPolicy policy) => RoleWords.List(RoleWords.Read(
        policy.Requirements.OfType<RolesAuthorizationRequirement>().SelectMany(r => r.AllowedRoles)));
}
