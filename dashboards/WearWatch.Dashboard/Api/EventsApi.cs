using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

internal static class EventsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/chains/{chain}/events", ListAsync).WithTags("Events")
            .WithSummary("A chain's events, oldest first").AnswersList<EventJson>().ProducesProblem(404);
        api.MapPost("/events", TellAsync).WithTags("Events").WithSummary("Records an event; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<EventEntryJson>("application/json")
            .Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422);
        api.MapPut("/events/{id:long}/withdrawal", WithdrawAsync).WithTags("Events")
            .WithSummary("Takes an event out of use, for ever kept; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WordJson>("application/json").Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
    }

    private static async Task<IResult> WithdrawAsync(HttpRequest request, IntakeDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<WordJson>.ReadAsync(request, ApiJson.Default.WordJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By)
            ?? ReadingsApi.Answer(await desk.WithdrawEventAsync(id, Maker.Name(who, body.By), body.Why ?? "", ct));
    }

    private static async Task<IResult> ListAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, string chain, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        return ListPaging.Of(
            http, wish, await db.StandingEventsAsync(row.Id, ct),
            e => ListKey.Of(ListKey.Rising(e.At ?? e.ReceivedAt), ListKey.Rising(e.Id)), e => EventJson.Of(e, chain));
    }

    private static async Task<IResult> TellAsync(
        HttpRequest request, IntakeDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        var told = await KeyedRequest<EventEntryJson>.ReadAsync(request, WireShapes.Of<EventEntryJson>(), ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) return Problems.Refused([elsewhere]);
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        if (body.Read(out var faults) is not { } happened)
            return Problems.Refused([.. faults.Select(f => new Refusal(f.Column, f.Reason))]);
        var happening = new NewEvent
        {
            Key = told.Key,
            Told = happened,
            ToldBy = Maker.Name(who, body.ToldBy),
            Confirmed = body.Confirmed ?? false,
        };
        return ReadingsApi.Answer(await desk.TakeEventAsync(happening, ct));
    }
}
