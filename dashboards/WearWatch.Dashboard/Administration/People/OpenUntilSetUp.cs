using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Dashboard.Kit.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>While nobody is set up, lets requests of this machine do everything and refuses all others.</summary>
public sealed class OpenUntilSetUp(RequestDelegate next, SetUp setUp)
{
    private const string How =
        "Nobody is set up here yet, so WearWatch answers only to the machine it runs on. Open /people/first there in a browser, "
        + "or run the "
        + "dashboard there with the arguments: administrator NAME";

    public async Task InvokeAsync(HttpContext http)
    {
        if (await setUp.IsDoneAsync(http.RequestAborted) || IsForAll(http))
        {
            await next(http);
        }
        else if (SetUp.IsNear(http))
        {
            http.User = Who.Open;
            await next(http);
        }
        else
        {
            await RefuseAsync(http);
        }
    }

    // Health and the files that draw a page tell nothing of the plant.
    private static bool IsForAll(HttpContext http) => http.GetEndpoint()?.Metadata is { } about
        && about.GetMetadata<IAllowAnonymous>() is not null && about.GetMetadata<ComponentTypeMetadata>() is null;

    private static Task RefuseAsync(HttpContext http)
    {
        if (AccessAnswers.IsForProgram(http))
            return AccessAnswers.Problem(403, "Not set up", How, "not_set_up").ExecuteAsync(http);
        return new RazorComponentResult<DoorNotice>(
            new { Heading = "The administrator is not set up yet", Text = How })
        { StatusCode = 403 }.ExecuteAsync(http);
    }
}
