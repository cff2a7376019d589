using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Api;

/// <summary>Readings of parts and sprockets beside the elongation, and what they say.</summary>
internal static class PartReadingsApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var parts = api.MapGroup("").WithTags("Parts");
        parts.MapPost("/part-readings", TellAsync)
            .WithSummary("Records a reading of a part or a sprocket; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo)
            .Accepts<PartReadingEntryJson>("application/json").Produces<TakenJson>(201).Produces<TakenJson>()
            .ProducesProblem(400).ProducesProblem(409).ProducesValidationProblem(422);
        parts.MapPut("/part-readings/{id:long}/withdrawal", WithdrawAsync)
            .WithSummary("Takes a reading of a part out of use, for ever kept, with the reason; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<WordJson>("application/json").Produces<TakenJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
        parts.MapGet("/chains/{chain}/parts", StateAsync)
            .WithSummary("What a chain's parts and its sprockets say, each with its own limit and forecast")
            .Produces<PartsJson>().ProducesProblem(404);
    }

    private static async Task<IResult> TellAsync(
        HttpRequest request, PartDesk desk, PlantSettings plant, IDbContextFactory<WearDb> databases, CancellationToken ct)
    {
        var told = await KeyedRequest<PartReadingEntryJson>.ReadAsync(request, ApiJson.Default.PartReadingEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.ToldBy, body.MakerId) is { } others) return others;
        if (await PlantCheck.FaultAsync(plant, body.Plant, ct) is { } elsewhere) return Problems.Refused([elsewhere]);
        if (Tokens.Unit(body.Unit ?? "mm") is not { } unit) return Problems.Refused("unit", $"mm or in.");
        var written = new PartAsWritten
        {
            Chain = await databases.NameAsync(body.ChainId, body.Chain, ct) ?? "",
            TakenAt = body.TakenAt,
            CounterH = body.CounterH,
            Part = body.Part ?? "",
            Place = body.Place ?? "",
            Value = body.Value ?? "",
            New = body.New ?? "",
            Limit = body.Limit ?? "",
            LimitSource = body.LimitSource ?? "",
            Unit = unit,
        };
        return ReadingsApi.Answer(
            await desk.TakeAsync(new NewPartReading(written, told.Key, Maker.Name(who, body.ToldBy)), ct));
    }

    private static async Task<IResult> WithdrawAsync(HttpRequest request, PartDesk desk, long id, CancellationToken ct)
    {
        var told = await KeyedRequest<WordJson>.ReadAsync(request, ApiJson.Default.WordJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        var who = request.HttpContext.User;
        return Maker.Fault(who, body.By)
            ?? ReadingsApi.Answer(await desk.WithdrawAsync(id, Maker.Name(who, body.By), body.Why ?? "", ct));
    }

    private static async Task<IResult> StateAsync(
        IDbContextFactory<WearDb> databases, ChainReview review, string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.FindAsync(chain, ct) is not { } row) return ChainsApi.Unknown(chain);
        var reviewed = (await review.AssessAsync([row.Id], ct)).Single();
        return Results.Ok(new PartsJson(
            chain, reviewed.Parts.TensionFrom, [.. reviewed.Parts.Tracks.Select(t => PartTrackJson.Of(t, reviewed.Parts))],
            [.. reviewed.Raw.PartRows.Select(PartReadingJson.Of)]));
    }
}
