using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Notices;

namespace WearWatch.Dashboard.Api;

/// <summary>What a technician cannot put right goes to the planner.</summary>
internal static class HandedApi
{
    private const int Longest = 2000;

    public static void Map(IEndpointRouteBuilder api) => api.MapPost("/floor/handed", HandAsync).WithTags("Floor")
        .WithSummary("Hands a refused entry to the planner, as one line of the notice of such entries; needs an Idempotency-Key")
        .RequireAuthorization(Allowed.MeasureAndDo).Accepts<HandedEntryJson>("application/json").Produces<TakenJson>()
        .ProducesProblem(400).ProducesValidationProblem(422);

    private static async Task<IResult> HandAsync(HttpRequest request, HandedEntryDesk desk, CancellationToken ct)
    {
        var told = await KeyedRequest<HandedEntryJson>.ReadAsync(request, ApiJson.Default.HandedEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        var entry = (body.Entry ?? "").ReplaceLineEndings(" ").Trim();
        if (entry.Length is 0 or > Longest) return Problems.Refused("entry", $"Say in 1 to 2,000 characters what was entered.");
        await desk.HandAsync($"{Maker.Name(who, body.By)}: {entry}", ct);
        return ReadingsApi.Answer(new Plant.Intake.IntakeAnswer.Taken(0, AlreadyKnown: true));
    }
}
