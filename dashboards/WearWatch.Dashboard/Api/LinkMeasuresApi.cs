using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Lists;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Units;

namespace WearWatch.Dashboard.Api;

/// <summary>Measures of a round-link chain's links, and what they say.</summary>
internal static class LinkMeasuresApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var links = api.MapGroup("").WithTags("Links");
        links.MapPost("/link-measures", TellAsync)
            .WithSummary("Records measures of a round-link chain's links; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<LinkMeasureEntryJson>("application/json").Produces<TakenJson>(201).Produces<TakenJson>()
            .ProducesProblem(400).ProducesProblem(409).ProducesValidationProblem(422);
        links.MapPut("/link-measures/{id:long}", CorrectAsync)
            .WithSummary("Puts right measures of links with a reason; the old ones stay on record; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<LinkMeasureEntryJson>("application/json").Produces<TakenJson>(201).Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
        links.MapPut("/link-measures/{id:long}/withdrawal", WithdrawAsync)
            .WithSummary("Takes measures of links out of use, for ever kept, with the reason; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WordJson>("application/json").Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
        links.MapGet("/chains/{chain}/link-measures", ListAsync)
            .WithSummary("A chain's measures of links that stand, oldest first")
            .AnswersList<LinkMeasureJson>().ProducesProblem(404);
        links.MapGet("/chains/{chain}/links", StateAsync)
            .WithSummary("What a chain's links say: the worst of three measures, each with its own limit and forecast")
            .Produces<LinkStateJson>().ProducesProblem(404);
    }

    private static Task<IResult> TellAsync(
        HttpRequest request, LinkMeasureDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases,
        CancellationToken ct) =>
        EntryAsync(request, plant, databases, (entry, _) => desk.TakeAsync(entry, ct), ct);

    private static Task<IResult> CorrectAsync(
        HttpRequest request, LinkMeasureDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases, long id,
        CancellationToken ct) =>
        EntryAsync(request, plant, databases, (entry, why) => desk.CorrectAsync(id, entry, why, ct), ct);

    private static async Task<IResult> EntryAsync(
        HttpRequest request, PlantSettings plant, IDbContextFactory<WearDb> databases,
        Func<NewLinkMeasures, string, Task<IntakeAnswer>> take, CancellationToken ct)
    {
        var told = await KeyedRequest<LinkMeasureEntryJson>.ReadAsync(request, ApiJson.Default.LinkMeasureEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) return Problems.Refused([elsewhere]);
        body = body with { Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) };
        if (Tokens.Read<Tool>(body.Tool ?? "caliper") is not { } tool)
            return Problems.Refused("tool", $"One of {Tokens.All<Tool>()}.");
        if (Tokens.Unit(body.Unit ?? "mm") is not { } unit) return Problems.Refused("unit", $"mm or in.");
        return ReadingsApi.Answer(await take(ToEntry(body, told.Key, Maker.Name(who, body.ToldBy), tool, unit), body.Why ?? ""));
    }

    private static async Task<IResult> WithdrawAsync(HttpRequest request, LinkMeasureDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<WordJson>.ReadAsync(request, ApiJson.Default.WordJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By)
            ?? ReadingsApi.Answer(await desk.WithdrawAsync(id, Maker.Name(who, body.By), body.Why ?? "", ct));
    }

    private static async Task<IResult> ListAsync(
        HttpContext http, IDbContextFactory<WearDb> databases, string chain, [AsParameters] ListWish wish, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var told = await db.LinkMeasures.AsNoTracking().Where(m => m.ChainId == row.Id).OrderBy(m => m.Id).ToListAsync(ct);
        return ListPaging.Of(
            http, wish, StandingRows.Standing(told),
            m => ListKey.Of(ListKey.Rising(m.TakenAt ?? m.ReceivedAt), ListKey.Rising(m.Id)), m => LinkMeasureJson.Of(m, chain));
    }

    private static async Task<IResult> StateAsync(
        IDbContextFactory<WearDb> databases, ChainReview review, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var links = (await review.AssessAsync([row.Id], ct)).SingleOrDefault()?.Links;
        return Results.Ok(LinkStateJson.Of(links, row.ToCard()));
    }

    private static NewLinkMeasures ToEntry(LinkMeasureEntryJson body, string key, string by, Tool tool, LengthUnit unit) => new()
    {
        Key = key,
        Chain = body.Chain ?? "",
        TakenAt = body.TakenAt,
        CounterH = body.CounterH,
        Place = body.Place ?? "",
        Tool = tool,
        OneLink = body.OneLink ?? "",
        SeveralLinks = body.SeveralLinks ?? "",
        Links = body.Links,
        D1 = body.D1 ?? "",
        D2 = body.D2 ?? "",
        Unit = unit,
        ToldBy = by,
    };
}
