using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Api;

internal static class MeApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var me = api.MapGroup("/me").WithTags("People");
        me.MapGet("", Answer).WithSummary("Who asks: a person, or a key; 401 when the session has ended").ProducesProblem(401);
        me.MapPut("/language", SpeakAsync)
            .WithSummary("Keeps the language of the person who asks, for every device; needs an Idempotency-Key")
            .Accepts<SpeechJson>("application/json").Produces<MeJson>().ProducesProblem(400).ProducesValidationProblem(422);
    }

    private static MeJson Answer(HttpContext http) => Of(http, http.User.Language());

    private static async Task<IResult> SpeakAsync(HttpRequest request, PeopleDesk people, CancellationToken ct)
    {
        var told = await KeyedRequest<SpeechJson>.ReadAsync(request, ApiJson.Default.SpeechJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        if (Tongue.Of(body.Language) is not { } chosen)
            return Problems.Refused("language", $"One of {string.Join(", ", Tongue.All.Select(t => t.Code))}.");
        if (request.HttpContext.User.PersonId() is not { } person)
            return Problems.Refused("language", $"Only a person has a language of their own: send Accept-Language.");
        await people.SpeakAsync(person, chosen.Code, ct);
        return Results.Ok(Of(request.HttpContext, chosen.Code));
    }

    private static MeJson Of(HttpContext http, string? language) => new(
        http.User.PersonId(), http.User.KeptName(), http.User.RoleNames(), http.User.IsOpen(), http.User.TabletId() is not null,
        language);
}
