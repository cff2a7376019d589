using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.People;

namespace WearWatch.Dashboard.Api;

internal static class MeApi
{
    public static void Map(IEndpointRouteBuilder api) =>
        api.MapGet("/me", (HttpContext http) => new MeJson(http.User.PersonId(), http.User.KeptName(), http.User.RoleNames(),
            http.User.IsOpen(), http.User.TabletId() is not null))
            .WithSummary("Who asks: a person, or a key; 401 when the session has ended").WithTags("People").ProducesProblem(401);
}
