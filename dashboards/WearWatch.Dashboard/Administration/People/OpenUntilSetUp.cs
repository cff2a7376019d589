using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>While nobody is set up, lets requests of this machine do everything and refuses all others.</summary>
public sealed class OpenUntilSetUp(RequestDelegate next, SetUp setUp)
{
    private static Phrase How =>
        $"Nobody is set up here yet, so WearWatch answers only to the machine it runs on. Open /people/first and give the code "
        + $"of the console, or run the dashboard there with the arguments: administrator NAME";

    public async Task InvokeAsync(HttpContext http)
    {
        if (await setUp.IsDoneAsync(http.RequestAborted) || IsForAll(http))
        {
            await next(http);
        }
        else if (NearRequest.IsNear(http))
        {
            http.User = Who.Open;
            await next(http);
        }
        else
        {
            await RefuseAsync(http);
        }
    }

    // Health, the files that draw a page and the set-up, which asks for its code, tell nothing of the plant.
    private static bool IsForAll(HttpContext http) => http.GetEndpoint()?.Metadata is { } about
        && about.GetMetadata<IAllowAnonymous>() is not null
        && (about.GetMetadata<ComponentTypeMetadata>() is not { } page || page.Type == typeof(FirstPage));

    private static Task RefuseAsync(HttpContext http)
    {
        if (AccessAnswers.IsForProgram(http))
            return Problems.Of("not_set_up", $"Not set up", How).ExecuteAsync(http);
        return new RazorComponentResult<DoorNotice>(
            new { Heading = T["The administrator is not set up yet"], Text = T[How] })
        { StatusCode = 403 }.ExecuteAsync(http);
    }
}
