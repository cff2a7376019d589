using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Dashboard.Api.Wire;
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
            .WithSummary("A chain's events, oldest first").Produces<IReadOnlyList<EventJson>>().ProducesProblem(404);
        api.MapPost("/events", TellAsync).WithTags("Events").WithSummary("Tells an event; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<EventEntryJson>("application/json")
            .Produces<TakenJson>(201).Produces<TakenJson>().ProducesProblem(400).ProducesProblem(409)
            .ProducesValidationProblem(422);
    }

    private static async Task<IResult> ListAsync(IDbContextFactory<WearDb> databases, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var standing = await db.StandingEventsAsync(row.Id, ct);
        return Results.Ok<IReadOnlyList<EventJson>>([.. standing.Select(e => EventJson.Of(e, chain))]);
    }

    private static async Task<IResult> TellAsync(HttpRequest request, IntakeDesk desk, PlantSettings plant, CancellationToken ct)
    {
        var told = await KeyedRequest<EventEntryJson>.ReadAsync(request, ApiJson.Default.EventEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) return Problems.Refused([elsewhere]);
        if (Tokens.Read<ChainEventKind>(body.Event) is not { } kind)
            return Problems.Refused("event", "One of " + Tokens.All<ChainEventKind>() + ".");
        var method = Tokens.Read<OilMethod>(body.OilMethod);
        if (method is null && body.OilMethod is not null)
            return Problems.Refused("oil_method", "One of " + Tokens.All<OilMethod>() + ".");
        var happening = new NewEvent
        {
            Key = told.Key,
            Chain = body.Chain ?? "",
            Kind = kind,
            At = body.TakenAt,
            CounterBeforeH = body.CounterHBefore,
            CounterAfterH = body.CounterHAfter,
            Lot = body.Lot ?? "",
            Oil = new OilApplied(method, body.OilGrade ?? "", body.OilAmountMl),
            Broke = body.Broke ?? false,
            PitchesOut = body.PitchesOut,
            TakeUpMm = body.TakeUpMm,
            Note = body.Note ?? "",
            ToldBy = Maker.Name(who, body.ToldBy),
        };
        return ReadingsApi.Answer(await desk.TakeEventAsync(happening, ct));
    }
}
